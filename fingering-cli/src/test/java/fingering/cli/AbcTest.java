package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Scores typed in ABC notation (ABC standard 2.1, from memory). */
final class AbcTest {
  private static final Path FERRY = Path.of("..", "docs", "examples", "ferry.abc");
  private static final String SCALE = "X:1\\nM:4/4\\nL:1/4\\nK:D clef=alto\\nDEFG|ABcd|";

  @TempDir Path folder;

  private static JsonNode plan(Object... arguments) {
    return Session.of(
            Stream.concat(
                    Stream.of("plan"),
                    Stream.concat(Stream.of(arguments), Stream.of("--format", "json")))
                .toArray())
        .json();
  }

  private static List<String> written(JsonNode plan) {
    return texts(plan.get("notes"), "written");
  }

  @Test
  void aTuneIsTypedWithEscapesOrOnSeparateLines() {
    JsonNode escaped = plan("--abc", SCALE);

    assertThat(written(escaped)).containsExactly("D4", "E4", "F#4", "G4", "A4", "B4", "C#5", "D5");
    assertThat(texts(escaped.get("notes"), "measure"))
        .containsExactly("1", "1", "1", "1", "2", "2", "2", "2");
    assertThat(plan("--abc", SCALE.replace("\\n", "\n"))).isEqualTo(escaped);
  }

  @Test
  void aTypedTuneIsPlannedAsItsFile() throws IOException {
    Path file = folder.resolve("Scale.ABC");
    Files.writeString(file, SCALE.replace("\\n", "\r\n"));

    assertThat(Session.of("compare", file).succeeded().answer())
        .isEqualTo(Session.of("compare", "--abc", SCALE).succeeded().answer());
  }

  @ParameterizedTest
  @CsvSource({"1, violin, The Ferry Home", "2, viola, Rain on the Slates", "3, cello, Barge Song"})
  void aTuneOfAFileIsChosenByNumber(String number, String instrument, String title) {
    JsonNode plan = plan(FERRY, "--tune", number);
    assertThat(plan.get("title").asText()).isEqualTo(title);
    assertThat(plan.get("instrument").asText()).isEqualTo(instrument);
  }

  @Test
  void severalTunesAreListedForAChoice() {
    assertThat(Session.of("compare", FERRY).refused(2).err())
        .contains(
            "ferry.abc contains 3 tunes; choose one: 1 The Ferry Home, 2 Rain on the Slates, 3 Barge Song. Use --tune.");
  }

  @Test
  void measuresAndOtherOptionsWorkAsForAScore() {
    assertThat(texts(plan(FERRY, "--tune", "1", "--measures", "0-1").get("notes"), "measure"))
        .containsExactly("0", "1", "1", "1", "1");
    assertThat(written(plan(FERRY, "--tune", "2", "--measures", "B", "--tempo", "quarter=60")))
        .startsWith("A3", "F4");
    assertThat(plan("--abc", "K:C bass\\nC,2 G,2|", "--instrument", "bass").get("instrument"))
        .hasToString("\"bass\"");
  }

  @Test
  void defaultsAreReported() {
    Session session = Session.of("plan", "--abc", "D2 GA B2|").succeeded();
    assertThat(session.out())
        .contains("Note: the tune has no number (X:), meter (M:), note length (L:), key (K:)");
    assertThat(session.lines()).allMatch(line -> line.length() <= 80);
    JsonNode compared = Session.of("compare", "--abc", "D2 GA B2|", "--format", "json").json();
    assertThat(compared.get("remarks").get(0).asText()).startsWith("the tune has no number (X:)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "2", "3"})
  void aMarkedCopyIsAScoreThatGivesTheSamePlan(String tune) {
    for (String ending : List.of("musicxml", "mxl")) {
      Path marked = folder.resolve(tune + "." + ending);
      JsonNode made = plan(FERRY, "--tune", tune, "--write", marked);
      JsonNode read = plan(marked, "--keep-printed");
      for (String field : List.of("measure", "onset", "written", "string", "finger")) {
        assertThat(texts(read.get("notes"), field))
            .as(ending + " " + field)
            .isEqualTo(texts(made.get("notes"), field));
      }
    }
  }

  @Test
  void aMarkedCopyNeverReplacesAFile() throws IOException {
    Path mine = Files.writeString(folder.resolve("mine.musicxml"), "my score");
    assertThat(Session.of("plan", "--abc", SCALE, "--write", mine).refused(2).err())
        .contains("already exists");
    assertThat(mine).hasContent("my score");
    Session.of("plan", "--abc", SCALE, "--write", folder.resolve("scale.abc")).refused(2);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(mine);
    }
  }

  @Test
  void typedFingersAreKeptAndCompared() {
    String fingered = "K:D clef=alto\\n!1!E !2!F !4!A !open!d|";
    assertThat(texts(plan("--abc", fingered, "--keep-printed").get("notes"), "finger"))
        .startsWith("1", "2", "4");
    assertThat(Session.of("compare", "--abc", fingered).succeeded().out()).contains("as printed");
  }

  @Test
  void weightsAreLearnedFromAFingeredTune() throws IOException {
    Path file = folder.resolve("fingered.abc");
    Files.writeString(
        file, "X:1\nM:4/4\nL:1/4\nK:D\n!0!D!1!E!2!F!3!G|!0!A!1!B!2!c!3!d|!1!e!2!f!3!g!4!a|\n");
    assertThat(Session.of("learn", file).succeeded().out()).contains("fingered.abc");
    assertThat(Session.of("learn", FERRY).refused(2).err()).contains("choose one: ", "Use --tune.");
  }

  @ParameterizedTest
  @CsvSource({
    "'K:C tenor\\nA', 'Use --instrument.'",
    "'', '--abc contains no tune'",
    "'z4', '--abc, line 1, column 3: the tune ends here without a note'",
  })
  void aTypedTuneThatCannotBeReadIsRefused(String abc, String told) {
    for (String command : List.of("plan", "compare")) {
      assertThat(Session.of(command, "--abc", abc).refused(2).err()).contains(told);
    }
  }

  @Test
  void aFileInAnOlderEncodingIsReadWithARemark() throws IOException {
    String tune = "X:1\nT:Für Gäste\nK:C\nA|";
    Path latin = folder.resolve("latin.abc");
    Files.write(latin, tune.getBytes(StandardCharsets.ISO_8859_1));
    assertThat(Session.of("plan", latin).succeeded().out())
        .contains("Für Gäste", "Note: the file is not in UTF-8; it was read as Latin-1");
    Path wide = folder.resolve("wide.abc");
    Files.write(wide, tune.getBytes(StandardCharsets.UTF_16));
    assertThat(plan(wide).get("title").asText()).isEqualTo("Für Gäste");
  }

  @Test
  void aSignThatCannotBeReadIsLeftOutWithANote() throws IOException {
    Path file = folder.resolve("signs.abc");
    Files.writeString(file, "X:1\nM:4/4\nL:1/4\nK:D\nDkEFG|ABcd H|\n");
    assertThat(Session.of("plan", file, "--instrument", "violin").succeeded().out())
        .contains("Note: line 5, column 2: the sign 'k' is not used in ABC; it was left out")
        .contains("line 5, column 12: the decoration 'fermata' has no note after it");
  }

  @Test
  void theVoicesOfATuneAreParts() throws IOException {
    Path file = folder.resolve("duet.abc");
    Files.writeString(file, "X:1\nM:4/4\nL:1/4\nK:D\nV:1\nDEFG|\nV:2 clef=bass\nD,2E,2|\n");
    assertThat(Session.of("plan", file).refused(2).err())
        .contains("choose one, and its instrument: 1 Part 1", "2 Part 2", "Use --part and");
    assertThat(written(plan(file, "--part", "2"))).containsExactly("D3", "E3");
  }

  @Test
  void aTuneMayNotExceedTheLimitsOfAScore() {
    String tune = "M:4/4\\nK:C\\nA|Z30|";
    assertThat(Session.of("plan", "--abc", tune, "--limit", "measures=30").refused(2).err())
        .contains(
            "line 3, column 3: the tune has more than 30 measures", "raise the limit 'measures'");
    Session.of("plan", "--abc", tune, "--limit", "measures=31").succeeded();
  }

  @Test
  void aFileThatCannotBeReadIsRefused() throws IOException {
    assertThat(Session.of("plan", folder.resolve("none.abc")).refused(2).err())
        .contains("There is no file");
    Path tunes = Files.createDirectory(folder.resolve("tunes.abc"));
    assertThat(Session.of("plan", tunes).refused(2).err()).contains("is a folder");
    assertThat(Session.of("plan", DEMO, "--tune", "1").refused(2).err())
        .contains("--tune chooses a tune of an ABC file");
    assertThat(Session.of("plan", FERRY, "--tune", "9").refused(2).err())
        .contains("contains no tune 9");
  }

  @Test
  void aScoreAndATypedTuneAreNotBothAccepted() {
    for (String command : List.of("plan", "compare")) {
      assertThat(Session.of(command, DEMO, "--abc", SCALE).refused(2).err())
          .contains("leave one of them out", "--help");
      assertThat(Session.of(command).refused(2).err()).contains("--abc", "--help");
    }
  }
}
