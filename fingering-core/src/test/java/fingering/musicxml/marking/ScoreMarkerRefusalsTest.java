package fingering.musicxml.marking;

import static fingering.musicxml.marking.MarkerTexts.all;
import static fingering.musicxml.marking.MarkerTexts.at;
import static fingering.musicxml.marking.MarkerTexts.finger;
import static fingering.musicxml.marking.MarkerTexts.measure;
import static fingering.musicxml.marking.MarkerTexts.string;
import static fingering.musicxml.marking.MarkerTexts.words;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.musicxml.UnreadableScoreException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScoreMarkerRefusalsTest {

  @ParameterizedTest
  @CsvSource({"1,0,0", "0,1,0", "0,0,2"})
  void aNoteThatDoesNotExistIsRefused(int part, int measure, int note) {
    assertThatThrownBy(
            () ->
                ScoreMarker.mark(
                    measure("<note/><note/>"), List.of(all(at(part, measure, note), "1", 1, "a"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("part %d, measure %d, note %d".formatted(part, measure, note));
  }

  @Test
  void aNoteMarkedTwiceIsRefused() {
    assertThatThrownBy(
            () -> ScoreMarker.mark(measure("<note/>"), List.of(finger(0, "1"), string(0, 1))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("part 0, measure 0, note 0");
  }

  @Test
  void timewiseScoresAreRefusedWithAdvice() {
    assertThatThrownBy(() -> ScoreMarker.mark("<score-timewise/>", List.of()))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("convert it to score-partwise");
  }

  @ParameterizedTest
  @ValueSource(strings = {"<museScore/>", "<html><p/></html>"})
  void otherXmlIsRefused(String xml) {
    assertThatThrownBy(() -> ScoreMarker.mark(xml, List.of()))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("is not a MusicXML score but contains <");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "<",
        "<score-partwise>",
        "<score-partwise>\n<part></measure></score-partwise>",
        "<score-partwise/><more/>",
        "<score-partwise>&#0;</score-partwise>"
      })
  void malformedXmlIsRefusedWithItsLine(String xml) {
    assertThatThrownBy(() -> ScoreMarker.mark(xml, List.of()))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("not well-formed XML at line");
  }

  @ParameterizedTest
  @ValueSource(strings = {"5", "", "t", "01", "10"})
  void onlyFingersOfTheHandAreFingers(String finger) {
    assertThatThrownBy(() -> finger(0, finger)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void impossibleStringsAndWordsAreRefused() {
    assertThatThrownBy(() -> string(0, 0)).isInstanceOf(IllegalArgumentException.class);
    for (String text : List.of("", "  ", "a\u0000", "\uD834", "\uFFFE")) {
      assertThatThrownBy(() -> words(0, text)).isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(() -> at(0, -1, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThat(at(0, 2, 0)).isGreaterThan(at(0, 1, 9)).isLessThan(at(1, 0, 0));
  }
}
