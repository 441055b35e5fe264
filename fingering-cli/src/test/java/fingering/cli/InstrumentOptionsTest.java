package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class InstrumentOptionsTest {
  private static final String OPEN_G =
      """
      # tuned for an open fifth at home
      instrument: cello
      name: open-g
      strings: [G3, D3, G2, D2]
      """;

  @TempDir Path folder;

  private Path score(String part, String... notes) throws IOException {
    return TinyScore.titled("Study").part(part, notes).in(folder);
  }

  private Path tuning(String text) throws IOException {
    return Files.writeString(folder.resolve("own.yaml"), text);
  }

  private static JsonNode plan(Object... arguments) {
    Object[] words = new Object[arguments.length + 3];
    words[0] = "plan";
    System.arraycopy(arguments, 0, words, 1, arguments.length);
    words[arguments.length + 1] = "--format";
    words[arguments.length + 2] = "json";
    return Session.of(words).json();
  }

  private static List<String> fingered(JsonNode plan) {
    return Session.entries(plan.get("notes")).stream()
        .map(note -> note.get("finger").asText() + " on " + note.get("string").asText())
        .toList();
  }

  // common practice, no source: the fifth string of a viola is the E of the violin
  @Test
  void aViolaWithFiveStringsHasAnEStringAbove() throws IOException {
    JsonNode plan =
        plan(score("Viola", "F5", "B5", "C3"), "--tuning", "five-string", "--allow", "1");

    assertThat(fingered(plan)).containsExactly("1 on 1", "4 on 1", "0 on 5");
    assertThat(plan.get("tuning").asText()).isEqualTo("five-string");
  }

  // common practice, no source: written B1 sounds B0, and C1 lies a semitone above it
  @Test
  void aBassWithALowBHasItOpenAndReadsThePartAnOctaveLower() throws IOException {
    Path score = score("Double Bass", "B1", "C2");

    assertThat(Session.of("plan", score, "--tuning", "five-string-low-b").succeeded().out())
        .contains("an octave lower");
    assertThat(fingered(plan(score, "--tuning", "five-string-low-b")))
        .containsExactly("0 on 5", "1 on 5");
  }

  // J. S. Bach, 5th cello suite, from memory: on the string tuned to G the first finger has A
  @Test
  void theFirstStringOfTheCelloIsTunedDownToG() throws IOException {
    JsonNode plan = plan(score("Cello", "A3", "C4"), "--tuning", "a-string-to-g", "--allow", "1");

    assertThat(fingered(plan)).containsExactly("1 on 1", "4 on 1");
  }

  @Test
  void theTuningIsPrintedAboveThePlan() throws IOException {
    String text = Session.of("compare", score("Cello", "G3"), "--tuning", "a-string-to-g").out();

    assertThat(text.lines().reduce("", (a, b) -> a + " " + b.strip()))
        .contains(
            "the tuning is 'a-string-to-g' (G3 D3 G2 C2) and the notes are read at sounding pitch");
  }

  @Test
  void aPartWithoutATuningIsReadForTheStandardOneInTheUsualSize() throws IOException {
    JsonNode plan = plan(score("Cello", "A3"));

    assertThat(plan.get("tuning").asText()).isEqualTo("standard");
    assertThat(plan.get("size").asText()).isEqualTo("4/4");
  }

  @Test
  void aTuningIsReadFromAFile() throws IOException {
    JsonNode plan = plan(score("Cello", "D2", "A3"), "--tuning", tuning(OPEN_G), "--allow", "1");

    assertThat(fingered(plan)).containsExactly("0 on 4", "1 on 1");
    assertThat(plan.get("tuning").asText()).isEqualTo("open-g");
  }

  @Test
  void aByteOrderMarkBeforeATuningIsIgnored() throws IOException {
    JsonNode plan = plan(score("Cello", "G3"), "--tuning", tuning("\uFEFF" + OPEN_G));

    assertThat(plan.get("tuning").asText()).isEqualTo("open-g");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/2", "610mm"})
  void aSizeIsANameOrALength(String size) throws IOException {
    assertThat(plan(score("Cello", "A3", "B3"), "--size", size).get("size").asText())
        .isEqualTo(size);
  }

  @Test
  void tuningAndSizeCanBeCombined() throws IOException {
    JsonNode plan = plan(score("Cello", "E4", "F4"), "--tuning", "five-string", "--size", "7/8");

    assertThat(plan.get("tuning").asText() + " " + plan.get("size").asText())
        .isEqualTo("five-string 7/8");
  }

  @Test
  void aSmallerInstrumentCostsADifferentAmount() {
    long usual = plan(DEMO).at("/cost/total").asLong();

    assertThat(plan(DEMO, "--size", "12").at("/cost/total").asLong()).isNotEqualTo(usual);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "compare"})
  void bothCommandsAcceptATuningAndASize(String command) {
    Session.of(command, DEMO, "--tuning", "five-string", "--size", "15").succeeded();
  }

  @Test
  void theDemoAcceptsThemToo() {
    String demo =
        Session.of("demo", "--tuning", "five-string", "--size", "15").succeeded().answer();

    assertThat(demo)
        .isEqualTo(
            Session.of("compare", DEMO, "--with-second", "--tuning", "five-string", "--size", "15")
                .answer());
  }

  @Test
  void thePartOfTheInstrumentIsFoundInEveryTuning() throws IOException {
    Path duo = TinyScore.titled("Duo").part("Violin", "A4").part("Viola", "E5").in(folder);

    JsonNode plan = plan(duo, "--instrument", "viola", "--tuning", "five-string");

    assertThat(plan.get("part").asText()).isEqualTo("Viola");
  }

  @Test
  void anInstrumentGuessedFromItsClefIsReportedInEveryTuning() throws IOException {
    Path score = score("Staff", "F5");

    assertThat(Session.of("plan", score, "--tuning", "semitone-up").succeeded().out())
        .contains("by its first clef");
  }

  private String refusal(Path score, Object... options) {
    Object[] words = new Object[options.length + 2];
    words[0] = "compare";
    words[1] = score;
    System.arraycopy(options, 0, words, 2, options.length);
    return Session.of(words).refused(2).err().strip();
  }

  @Test
  void anUnknownTuningListsTheKnownOnesAndMentionsFiles() throws IOException {
    assertThat(refusal(score("Viola", "A4"), "--tuning", "sideways"))
        .contains("'sideways'", "standard, five-string, semitone-up", "give a file");
  }

  @Test
  void anImpossibleFileNameIsAnUnknownTuning() throws IOException {
    assertThat(refusal(score("Viola", "A4"), "--tuning", "\0")).contains("choose one of standard");
  }

  @Test
  void aTuningOfAnotherInstrumentIsRefusedNamingBoth() throws IOException {
    assertThat(refusal(score("Viola", "A4"), "--tuning", "solo"))
        .contains("'solo' is for the double bass, not for the viola");
    assertThat(refusal(score("Viola", "A4"), "--tuning", tuning(OPEN_G)))
        .contains("'open-g'", "own.yaml is for the cello", "the part is for the viola");
  }

  @Test
  void anUnknownSizeListsTheKnownOnes() throws IOException {
    assertThat(refusal(score("Cello", "A3"), "--size", "16"))
        .contains("no size '16' of the cello; choose 4/4, 7/8, 3/4, 1/2, 1/4");
    assertThat(refusal(score("Cello", "A3"), "--size", "61mm")).contains("give 345 to 1035 mm");
  }

  @Test
  void aBadRowIsReportedWithFileAndLine() throws IOException {
    assertThat(refusal(score("Cello", "A3"), "--tuning", tuning(OPEN_G.replace("D3", "H3"))))
        .contains("own.yaml, line 4: 'H3' is not a pitch");
  }

  @Test
  void aFolderIsNotATuning() throws IOException {
    assertThat(refusal(score("Cello", "A3"), "--tuning", folder)).endsWith("inside it.");
  }

  @Test
  void aFileInAnotherEncodingIsRefused() throws IOException {
    Path file = folder.resolve("latin.yaml");
    Files.write(file, OPEN_G.replace("home", "café").getBytes(StandardCharsets.ISO_8859_1));

    assertThat(refusal(score("Cello", "A3"), "--tuning", file)).contains("UTF-8");
  }

  @Test
  void aFileTooLargeForATuningIsNotRead() throws IOException {
    assertThat(refusal(score("Cello", "A3"), "--tuning", tuning("#".repeat(70_000))))
        .contains("larger than 64 KiB");
  }

  @Test
  void anEmptyFileIsNotATuning() throws IOException {
    assertThat(refusal(score("Cello", "A3"), "--tuning", tuning("")))
        .contains("own.yaml, line 1: the file is empty");
  }

  @Test
  void aNoteBelowTheTuningIsReportedWithTheLowestNote() throws IOException {
    String out =
        Session.of("compare", score("Cello", "C2", "B1"), "--tuning", "a-string-to-g", "--notes")
            .succeeded()
            .out()
            .replaceAll("\\s+", " ");
    assertThat(out)
        .contains("B1 in measure 2, beat 1 is below the lowest string of the cello")
        .contains("(C2, tuning 'a-string-to-g'); it is left without a finger")
        .contains("– not on this instrument");
  }

  @Test
  void onATunedBassTheLowestNoteIsGivenAsItSounds() throws IOException {
    Path score = score("Double Bass", "F1");

    assertThat(refusal(score, "--tuning", "solo")).contains("(sounding F♯1, tuning 'solo')");
  }

  @Test
  void aNoteAboveTheFingerboardIsRefusedNamingTheTuning() throws IOException {
    assertThat(refusal(score("Viola", "C9"), "--tuning", "five-string"))
        .contains("beyond the end of the fingerboard (tuning 'five-string')");
  }

  @Test
  void theStandardTuningIsNotMentioned() throws IOException {
    assertThat(refusal(score("Cello", "B1"))).doesNotContain("tuning");
  }

  @Test
  void helpShowsBothOptions() {
    assertThat(Session.of("plan", "--help").out()).contains("--tuning NAME|FILE", "--size SIZE");
  }
}
