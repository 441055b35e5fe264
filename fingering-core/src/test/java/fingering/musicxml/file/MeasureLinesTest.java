package fingering.musicxml.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MeasureLinesTest {
  @Test
  void linesAreThoseOfAnEditor() {
    MeasureLines lines =
        MeasureLines.of(
            "<?xml version=\"1.0\"?>\r\n<score-partwise>\r\n<!-- two\nlines -->\r\n<part id=\"A\">"
                + "<measure/>\r\n<measure>\r\n<note/>\r\n</measure></part>\r\n<part id=\"B\">\r\n\r\n"
                + "<measure/></part></score-partwise>");
    assertThat(lines.line(1, 0)).contains(5);
    assertThat(lines.line(1, 1)).contains(6);
    assertThat(lines.line(1, 2)).isEmpty();
    assertThat(lines.line(2, 0)).contains(11);
    assertThat(lines.line(3, 0)).isEmpty();
  }
}
