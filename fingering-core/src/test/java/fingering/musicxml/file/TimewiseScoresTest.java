package fingering.musicxml.file;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Passage;
import fingering.musicxml.Refusal;
import fingering.musicxml.ScoreText;
import fingering.musicxml.marking.MarkerTexts;
import fingering.musicxml.marking.NoteMarks;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Scores ordered by measures. MusicXML 4.0 defines score-timewise: measures that hold parts, where
 * score-partwise has parts that hold measures; all else is the same.
 */
class TimewiseScoresTest {
  private static final String HEAD =
      "<?xml version=\"1.0\"?>\n<!DOCTYPE score-KIND PUBLIC \"-//Recordare//DTD MusicXML 4.0 Kind//EN\""
          + " \"http://www.musicxml.org/dtds/kind.dtd\">\n<score-KIND version='4.0'>\n"
          + "<part-list><score-part id=\"P1\"><part-name>Violin</part-name></score-part>"
          + "<score-part id=\"P2\"><part-name>Viola</part-name></score-part></part-list>\n";

  @TempDir private Path folder;

  private static String head(String kind) {
    return HEAD.replace("KIND", kind.toLowerCase(java.util.Locale.ROOT))
        .replace("Kind//", kind + "//")
        .replace("kind.dtd", kind.toLowerCase(java.util.Locale.ROOT) + ".dtd");
  }

  private static String music(String pitch) {
    return ScoreText.START + ScoreText.note(pitch, 16);
  }

  private static String timewise() {
    return head("Timewise")
        + "<measure number=\"1\" id='m1' width=\"9\">\n<part id=\"P1\">"
        + music("D5")
        + "</part><part id=\"P2\">"
        + music("A4")
        + "</part>\n</measure>\n<measure number='2'><part id=\"P2\">"
        + ScoreText.note("B4", 16)
        + "</part><!-- the violin rests --></measure>\n<measure number=\"3\"><part id=\"P1\"/>"
        + "<part id=\"P2\">"
        + ScoreText.note("C5", 16)
        + "</part></measure>\n</score-timewise>\n";
  }

  private static String partwise() {
    return head("Partwise")
        + "<part id=\"P1\">\n<measure number=\"1\" width=\"9\">"
        + music("D5")
        + "</measure>\n<measure number='2'></measure>\n<measure number=\"3\"></measure>\n</part>\n"
        + "<part id=\"P2\">\n<measure number=\"1\" width=\"9\">"
        + music("A4")
        + "</measure>\n<measure number='2'>"
        + ScoreText.note("B4", 16)
        + "</measure>\n<measure number=\"3\">"
        + ScoreText.note("C5", 16)
        + "</measure>\n</part>\n</score-partwise>\n";
  }

  private ScoreFile file() throws IOException {
    return ScoreFile.read(Files.writeString(folder.resolve("a.musicxml"), timewise()));
  }

  @Test
  void theMusicIsMovedCharacterForCharacter() throws IOException {
    assertThat(file().text()).isEqualTo(partwise());
  }

  @Test
  void everyPartIsReadAsFromAScoreOrderedByPartsWithARemark() throws IOException {
    Score read = ScoreReader.read(file());
    Score same = ScoreText.read(partwise());

    for (String part : List.of("Violin", "Viola")) {
      Passage passage = read.passage(PassageRequest.WHOLE.withPart(part));
      Passage expected = same.passage(PassageRequest.WHOLE.withPart(part));
      assertThat(passage.notes()).isEqualTo(expected.notes());
      assertThat(passage.measures()).isEqualTo(expected.measures()).hasSize(3);
      assertThat(passage.remarks()).contains(TimewiseScore.REMARK);
    }
  }

  @Test
  void marksGoIntoACopyOrderedByParts() throws IOException {
    ScoreFile file = file();
    NoteMarks finger = MarkerTexts.finger(0, "1");
    Path target = folder.resolve("b.musicxml");

    file.writeMarked(ScoreMarker.mark(file.text(), List.of(finger)), target);

    assertThat(Files.readString(target))
        .contains("<score-partwise", "<fingering>1</fingering>")
        .doesNotContain("imewise");
    assertThat(folder.resolve("a.musicxml")).hasContent(timewise());
  }

  @Test
  void aCompressedTimewiseScoreIsRead() throws IOException {
    Path archive = folder.resolve("a.mxl");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(archive))) {
      zip.putNextEntry(new ZipEntry("s.xml"));
      zip.write(timewise().getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    assertThat(ScoreFile.read(archive).text()).isEqualTo(partwise());
  }

  @Test
  void aTimewiseScoreWithoutMusicIsRefused() throws IOException {
    Path empty = Files.writeString(folder.resolve("a.xml"), "<score-timewise/>");
    Path bare =
        Files.writeString(
            folder.resolve("b.xml"), "<score-timewise><measure number='1'/></score-timewise>");

    for (Path file : List.of(empty, bare)) {
      assertThat(Refusal.of(() -> ScoreReader.read(ScoreFile.read(file))))
          .contains("no part with a measure in it");
    }
  }

  @Test
  void aTruncatedTimewiseScoreIsRefused() throws IOException {
    String cut = timewise().substring(0, timewise().length() - 30);
    Path file = Files.writeString(folder.resolve("a.xml"), cut);

    assertThat(Refusal.of(() -> ScoreFile.read(file))).contains("not well-formed XML at line");
  }

  @Test
  void partsTimesMeasuresStayWithinTheLimit() throws IOException {
    StringBuilder many = new StringBuilder("<score-timewise><measure>");
    for (int i = 0; i < 400; i++) {
      many.append("<part id='P").append(i).append("'/>");
    }
    many.append("</measure>").append("<measure/>".repeat(2_000)).append("</score-timewise>");
    Path file = Files.writeString(folder.resolve("a.xml"), many);

    assertThat(Refusal.of(() -> ScoreFile.read(file)))
        .contains("more than 500000 measures in all parts");
  }
}
