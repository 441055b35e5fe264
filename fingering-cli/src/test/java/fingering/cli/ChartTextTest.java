package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.cli.chart.ChartText;
import fingering.cli.terminal.Screen;
import fingering.cli.terminal.TextStyle;
import fingering.fingerboard.Chart;
import fingering.fingerboard.ChartRequest;
import fingering.fingerboard.Fingerboard;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;
import fingering.tables.Tuning;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ChartTextTest {
  private static final List<String> INSTRUMENTS = List.of("violin", "viola", "cello", "bass");

  @TempDir Path folder;

  // common practice, no source: D major in first position of the violin
  @Test
  void firstPositionShowsNoteFingerAndRingingStringOnEveryString() {
    List<String> lines =
        Session.of("chart", "violin", "--position", "1", "--key", "D-major").succeeded().lines();

    assertThat(lines.get(0)).isEqualTo("Violin, 1st position, D major");
    assertThat(lines)
        .anyMatch(line -> line.matches(" +mm +st\\. +IV G +III D +II A +I E"))
        .anyMatch(line -> line.matches(" +0 +0 +G3 0 +D4 0 +A4 0 +E5 0"))
        .anyMatch(line -> line.matches(" +36 +2 +│ A3 1 °II +│ E4 1 °I +│ B4 1 +│ F♯5 1"))
        .anyMatch(line -> line.matches(" +82 +5 +│ · +│ G4 3 °IV +│ D5 3 °III +│ A5 3 °II"));
  }

  @Test
  void chartsOfEveryInstrumentAndPositionFitEightyColumns() {
    for (String instrument : INSTRUMENTS) {
      assertFits(Session.of("chart", instrument));
      assertFits(Session.of("chart", instrument, "--key", "Bb-minor"));
      assertFits(Session.of("chart", instrument, "--string", "I"));
      for (String position : List.of("half", "1", "2", "3", "4", "5", "6", "7")) {
        assertFits(Session.of("chart", instrument, "--position", position));
        assertFits(Session.of("chart", instrument, "--position", position, "--key", "A#-minor"));
      }
    }
  }

  private static void assertFits(Session session) {
    int columns = Math.max(80, Screen.columns());
    assertThat(session.succeeded().lines()).allMatch(line -> line.length() <= columns);
  }

  @Test
  void fiveStringsStillFitEightyColumns() {
    Instrument five =
        Instruments.standard()
            .named("cello")
            .tuned(
                new Tuning(
                    "cello",
                    "five-string",
                    ImmutableList.of(
                        new OpenString(1, Pitch.parse("E4")),
                        new OpenString(2, Pitch.parse("A3")),
                        new OpenString(3, Pitch.parse("D3")),
                        new OpenString(4, Pitch.parse("G2")),
                        new OpenString(5, Pitch.parse("C2")))));
    for (ChartRequest request :
        List.of(ChartRequest.whole(), ChartRequest.whole().in(Position.FIRST))) {
      String text = ChartText.of(Chart.of(Fingerboard.of(five), request), 80, TextStyle.of(false));

      assertThat(text.lines()).allMatch(line -> line.length() <= 80);
      assertThat(text).contains("V C", "I E", "│ C♯/D♭");
    }
  }

  @Test
  void wholeFingerboardShowsPositionsAtTheSide() {
    assertThat(Session.of("chart", "viola").succeeded().lines())
        .anyMatch(line -> line.matches(" +21 +1 +half +│.*"))
        .anyMatch(line -> line.matches(" +94 +5 +3rd +│ F3 +│ C4 °IV.*"))
        .anyMatch(line -> line.matches(" +305 +29 +│.*"));
  }

  @Test
  void raisedNotesOfAMinorKeyAreInParentheses() {
    assertThat(Session.of("chart", "viola", "--key", "g-minor").succeeded().out())
        .contains("│ F4 ", "(F♯4)", "raised 6th or 7th");
  }

  @ParameterizedTest
  @ValueSource(strings = {"C", "IV", "4", "sul C"})
  void singleStringShowsEveryFingerOfANote(String name) {
    assertThat(Session.of("chart", "viola", "--string", name).succeeded().out())
        .contains("IV C string")
        .containsPattern("125 +7 +│ G3 +°III unison +1st.4, 2nd.3, 3rd.2, 4th.1\n");
  }

  @Test
  void extensionsComeWithAWarning() {
    assertThat(Session.of("chart", "cello", "--position", "1").succeeded().out())
        .contains("x4", "an extended finger", "stop if it hurts")
        .contains("Tune every ringing note to the open string");
    assertThat(Session.of("chart", "bass", "--position", "1").succeeded().out())
        .doesNotContain("stop if it hurts");
  }

  @Test
  void bassMentionsThatItSoundsBelowThePrintedNote() {
    assertThat(Session.of("chart", "bass").succeeded().out())
        .contains("an octave below the printed part");
  }

  @Test
  void chartAcceptsNamesInOtherLanguages() {
    assertThat(Session.of("chart", "Bratsche")).isEqualTo(Session.of("chart", "viola"));
  }

  @Test
  void signsSufficeWithoutColour() {
    assertThat(Session.of("chart", "violin").out()).doesNotContain("\u001b");
    Chart chart =
        Chart.of(
            Fingerboard.of(Instruments.standard().named("violin")),
            ChartRequest.whole().in(Position.FIRST));
    String coloured = ChartText.of(chart, 80, TextStyle.of(true));
    assertThat(coloured).contains("\u001b");
    assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "").lines().map(String::stripTrailing))
        .containsExactlyElementsOf(ChartText.of(chart, 80, TextStyle.of(false)).lines().toList());
  }

  @ParameterizedTest
  @CsvSource({
    "violin --string C, 'has no string ''C''; choose IV (G), III (D), II (A), I (E).'",
    "bass --position 1.5, 'has no 1½ position here; choose half, 1, 2'",
    "cello --position 2 --at 7, 'choose 3, 4.'"
  })
  void unavailableRequestsAreRejectedWithAlternatives(String typed, String message) {
    Object[] words = ("chart " + typed).split(" ", -1);

    assertThat(Session.of(words).refused(2).err()).contains(message);
  }

  @Test
  void chartIsWrittenToANewFileOnly() {
    Path file = folder.resolve("viola.txt");

    Session.of("chart", "viola", "--output", file).succeeded();

    assertThat(file).hasContent(Session.of("chart", "viola").out());
    assertThat(Session.of("chart", "viola", "--output", file).refused(2).err())
        .contains("exists already");
  }
}
