package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScaleCommandTest {
  private static final Path PLAYER = Path.of("..", "docs", "examples", "imke.yaml");

  @TempDir Path folder;

  private static Session scale(Object... arguments) {
    Object[] all = new Object[arguments.length + 1];
    all[0] = "scale";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    return Session.of(all);
  }

  // D major of the viola in 1st position, with the fourth finger at the turn: common practice, no
  // source
  @Test
  void fingersAreBelowTheirNotes() {
    List<String> lines =
        scale("D major", "--instrument", "viola", "--octaves", "1", "--slur", "4")
            .succeeded()
            .lines();

    assertThat(lines.get(0)).isEqualTo("D major, 1 octave");
    assertThat(lines.get(1)).isEqualTo("Viola, measures 1–3, 15 notes, quarter = 80");
    assertThat(lines.subList(4, 10))
        .containsExactly(
            "m.      1                                    2",
            "note    D3   E3   F♯3  G3   A3   B3   C♯4  │ D4   C♯4  B3   A3   G3   F♯3  E3",
            "finger  1    2    3    0    1    2    3    │ 4    3    2    1    0    3    2",
            "string  IV             III                 │                          IV",
            "pos.    1st                                │",
            "bow     ╰─────────╯    ╰──────────────╯    │ ╰─────────╯    ╰──────────────╯");
    assertThat(lines).anyMatch(line -> line.startsWith("1st position throughout: no shifts,"));
    assertThat(String.join(" ", lines))
        .contains("stop if it hurts", "Your teacher has the last word");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Ab major --octaves 3 --slur 8",
        "G# harmonic minor --octaves 2",
        "chromatic on Bb",
        "A minor arpeggio --octaves 3 --slur 9",
        "Bb major --pattern double-thirds --octaves 2 --slur 2",
        "diminished seventh on C --octaves 3"
      })
  void noLineIsWiderThanTheTerminal(String arguments) {
    Object[] words = (arguments + " --instrument violin").split(" ", -1);

    assertThat(scale(words).succeeded().lines()).allMatch(line -> line.length() <= 80);
  }

  // Names of the notes as in ScaleTest of the core; the file is read without the program's help.
  @ParameterizedTest
  @CsvSource({
    "violin, G# harmonic minor, G#3 A#3 B3 C#4 D#4 E4 F##4 G#4 F##4 E4 D#4 C#4 B3 A#3 G#3",
    "cello, F melodic minor, F2 G2 Ab2 Bb2 C3 D3 E3 F3 Eb3 Db3 C3 Bb2 Ab2 G2 F2",
    "bass, A dominant seventh, A2 C#3 E3 G3 A3 G3 E3 C#3 A2"
  })
  void writtenScoreContainsTheScaleWithItsFingering(String instrument, String scale, String notes) {
    Path file = folder.resolve("scale.musicxml");

    JsonNode plan =
        scale(
                scale,
                "--instrument",
                instrument,
                "--octaves",
                "1",
                "--write",
                file,
                "--format",
                "json")
            .json();

    assertThat(Engraving.sounding(file).stream().map(Engraving.Sounding::written))
        .containsExactly(notes.split(" ", -1));
    Map<String, Integer> counts = Engraving.counts(file);
    assertThat(counts.get("technical/fingering")).isEqualTo(plan.get("notes").size());
    assertThat(counts).containsKeys("technical/string", "direction-type/words#1st pos.");
  }

  // What is written, planned again with its fingers kept, is the same plan.
  @Test
  void writtenScoreGivesTheSamePlanAgain() {
    Path file = folder.resolve("scale.mxl");
    List<Object> scale =
        List.of("C major", "--instrument", "cello", "--octaves", "3", "--slur", "4");

    JsonNode planned = scale(concat(scale, "--write", file, "--format", "json").toArray()).json();
    JsonNode again = Session.of("plan", file, "--keep-printed", "--format", "json").json();

    assertThat(again.get("notes")).isEqualTo(planned.get("notes"));
    assertThat(again.get("cost")).isEqualTo(planned.get("cost"));
  }

  private static List<Object> concat(List<Object> first, Object... then) {
    List<Object> all = new java.util.ArrayList<>(first);
    all.addAll(List.of(then));
    return all;
  }

  @Test
  void writtenScoreNeverReplacesAFile() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.musicxml"), "my notes");

    Session session = scale("D major", "--instrument", "violin", "--write", file).refused(2);

    assertThat(session.err()).contains("already exists and is not overwritten");
    assertThat(Files.readString(file)).isEqualTo("my notes");
  }

  @Test
  void demandsApplyToScales() {
    Session session =
        scale("G major", "--instrument", "violin", "--strings", "G", "--octaves", "1").succeeded();

    assertThat(session.out()).contains("Demands on 'as demanded'", "- play on string IV");
    assertThat(session.lines()).filteredOn(line -> line.startsWith("string  IV")).hasSize(1);
  }

  @Test
  void playerFileSetsTheInstrumentAndListsNewSkills() {
    Session session = scale("D major", "--octaves", "3", "--player", PLAYER).succeeded();

    assertThat(session.lines().get(1)).startsWith("Viola, ");
    assertThat(session.out()).contains("New to this player");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          H major --instrument violin               | 2 | 'H major' is not a scale
          G# major --instrument violin              | 2 | write the same notes as Ab major
          D major                                   | 2 | name it with --instrument
          D major --instrument oud                  | 2 | no instrument 'oud'
          D major --instrument violin --octaves 7   | 2 | ask for 1 to 5
          D major --instrument violin --slur 1      | 2 | a slur has 2 to 24 eighths
          D major --instrument violin --from E4     | 2 | start on D4
          D major --instrument violin --pattern x   | 2 | choose one of steps, thirds, double-thirds
          D chromatic --instrument violin --pattern thirds | 2 | only seven-note scales
          D major --instrument violin --octaves 5   | 2 | at most 3 octaves of D major, from D4, not 5
          D major --instrument viola --allow 3      | 2 | at most 1 octave of D major, from D4, not 2
          D major --instrument viola --tuning x     | 2 | no tuning 'x'
          """)
  void impossibleRequestsAreRejectedInOneSentence(String arguments, int code, String message) {
    Object[] words = arguments.strip().split(" ", -1);

    assertThat(scale(words).refused(code).err()).contains(message);
  }

  @Test
  void documentationShowsWhatTheProgramPlans() throws IOException {
    List<String> shown =
        Files.readString(Path.of("..", "docs", "scales.md"))
            .lines()
            .filter(line -> line.isEmpty() || line.startsWith("    "))
            .map(line -> line.isEmpty() ? "" : line.substring(4))
            .toList();
    int plans = 0;
    for (int i = 0; i < shown.size(); i++) {
      if (shown.get(i).startsWith("fingering scale ") && shown.get(i + 1).isEmpty()) {
        Object[] words = shown.get(i).substring("fingering scale ".length()).split(" ", -1);
        Session session = scale(words);
        List<String> printed =
            session.code() == 0
                ? session.lines().subList(0, legend(session.lines()) + 1)
                : session.err().lines().toList();
        assertThat(shown.subList(i + 2, i + 2 + printed.size())).isEqualTo(printed);
        plans++;
      }
    }
    assertThat(plans).isEqualTo(3);
  }

  private static int legend(List<String> lines) {
    return lines.indexOf(
        "String (I is the highest) and position stand where they change; 0 is open.");
  }
}
