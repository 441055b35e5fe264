package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WrittenFilesTest {
  private static final Set<String> MARKS =
      Set.of(
          "fingering", "string", "technical", "notations", "direction", "direction-type", "words");

  @TempDir Path folder;

  @Test
  void outputFileHasTheTextOfTheTerminalInUtf8() throws IOException {
    Path file = folder.resolve("plans.txt");

    Session session = Session.of("compare", DEMO, "--output", file).succeeded();

    assertThat(session.out()).isEmpty();
    String text = decoded(file);
    assertThat(text).isEqualTo(Session.of("compare", DEMO).out()).contains("↑", "0–32");
    assertThat(names()).containsExactly("plans.txt");
  }

  @Test
  void jsonOutputKeepsLettersOfOtherLanguages() throws IOException {
    Path score = TinyScore.titled("Für Łucja – 夜").part("Viola", "A4", "B4").in(folder);
    Path file = folder.resolve("plans.json");

    Session.of("compare", score, "--format", "json", "--output", file).succeeded();

    assertThat(Session.json(decoded(file)).get("title").asText()).isEqualTo("Für Łucja – 夜");
  }

  private static String decoded(Path file) throws IOException {
    // Refuses bytes that are not UTF-8, as readString alone does.
    return StandardCharsets.UTF_8
        .newDecoder()
        .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
        .toString();
  }

  @ParameterizedTest
  @CsvSource({"check, --output, a.txt", "handout, --output, a.html", "plan, --write, a.musicxml"})
  void unfinishedFileOfAKilledProgramIsDeletedADayLater(String command, String option, String name)
      throws IOException {
    String stale = "." + UUID.randomUUID() + ".part";
    Files.setLastModifiedTime(
        Files.writeString(folder.resolve(stale), "half"),
        FileTime.from(Instant.now().minus(Duration.ofHours(25))));

    Session.of(command, DEMO, option, folder.resolve(name));

    assertThat(names()).containsExactly(name);
  }

  @Test
  void outputNeverReplacesAFile() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.txt"), "my notes");

    for (String command : List.of("compare", "plan")) {
      Session refused = Session.of(command, DEMO, "--output", file).refused(2);
      assertThat(refused.err()).contains("mine.txt", "exists already");
    }
    assertThat(file).hasContent("my notes");
    assertThat(names()).containsExactly("mine.txt");
  }

  @Test
  void refusedOutputAlsoKeepsTheMarkedCopyFromBeingWritten() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.txt"), "my notes");

    Session.of("plan", DEMO, "--write", folder.resolve("m.xml"), "--output", file).refused(2);

    assertThat(names()).containsExactly("mine.txt");
  }

  @Test
  void outputIntoAMissingFolderIsRefused() {
    Session.of("compare", DEMO, "--output", folder.resolve("no").resolve("x.txt")).refused(2);
  }

  @Test
  void markingWritesACopyAndDoesNotChangeTheScore() throws IOException {
    Path original = Files.copy(DEMO, folder.resolve("part.musicxml"));
    Path marked = folder.resolve("marked.musicxml");

    Session.of("plan", original, "--choose", "third", "--write", marked).succeeded();

    assertThat(original).hasSameBinaryContentAs(DEMO);
    assertThat(names()).containsExactly("marked.musicxml", "part.musicxml");
    assertThat(decoded(marked)).contains("<fingering>");
  }

  @Test
  void markingNeverReplacesAFile() throws IOException {
    Path original = Files.copy(DEMO, folder.resolve("part.musicxml"));
    Path other = Files.writeString(folder.resolve("other.musicxml"), "another score");

    Session.of("plan", original, "--write", original).refused(2);
    Session.of("plan", original, "--write", other).refused(2);
    Session.of("plan", original, "--write", folder.resolve("part.pdf")).refused(2);

    assertThat(original).hasSameBinaryContentAs(DEMO);
    assertThat(other).hasContent("another score");
    assertThat(names()).containsExactly("other.musicxml", "part.musicxml");
  }

  @Test
  void markedCopyReadBackWithKeepPrintedGivesTheSamePlan() {
    for (String ending : List.of("musicxml", "mxl")) {
      for (String choice : List.of("first", "third", "second", "free")) {
        Path marked = folder.resolve(choice + "." + ending);
        JsonNode written =
            Session.of("plan", DEMO, "--choose", choice, "--write", marked, "--format", "json")
                .json();

        JsonNode read = Session.of("plan", marked, "--keep-printed", "--format", "json").json();

        for (String field : List.of("measure", "onset", "written", "string", "finger")) {
          assertThat(texts(read.get("notes"), field))
              .as(choice + " " + ending + " " + field)
              .isEqualTo(texts(written.get("notes"), field));
        }
      }
    }
  }

  @Test
  void markedCopyDiffersFromTheScoreOnlyByItsMarks() {
    Path marked = marked();
    Map<String, Integer> before = Engraving.counts(DEMO);
    Map<String, Integer> after = Engraving.counts(marked);

    Set<String> keys = new HashSet<>(before.keySet());
    keys.addAll(after.keySet());
    for (String key : keys) {
      int more = after.getOrDefault(key, 0) - before.getOrDefault(key, 0);
      assertThat(more).as(key).isNotNegative();
      if (more > 0) {
        assertThat(isMark(key)).as(key).isTrue();
      }
    }
    assertThat(after).containsKeys("technical/fingering", "technical/string");
    assertThat(after.get("technical/fingering")).isEqualTo(Engraving.sounding(DEMO).size());
  }

  private static boolean isMark(String key) {
    String element = key.replaceAll("[@#](?s:.*)", "");
    String name = element.substring(element.indexOf('/') + 1);
    return MARKS.contains(name)
        || element.equals("direction/voice")
        || element.equals("direction/staff");
  }

  @Test
  void markedCopyHasTheNotesOfTheScore() {
    assertThat(Engraving.sounding(marked())).isEqualTo(Engraving.sounding(DEMO));
  }

  @Test
  void comparisonOfAMarkedCopyShowsThePrintedFingering() {
    Path marked = marked();

    Session compare = Session.of("compare", marked).succeeded();
    JsonNode plans = Session.of("compare", marked, "--format", "json").json().get("plans");

    assertThat(compare.out())
        .containsPattern("(?s)\n1st position .*\n3rd position .*\nas printed .*\npartly 3rd ");
    assertThat(texts(plans, "name"))
        .containsExactly("1st position", "3rd position", "as printed", "partly 3rd");
    assertThat(texts(plans.at("/2/notes"), "finger"))
        .isEqualTo(texts(plans.at("/1/notes"), "finger"));
    assertThat(Session.of("compare", DEMO).out()).doesNotContain("as printed");
  }

  private Path marked() {
    Path marked = folder.resolve("marked.musicxml");
    Session.of("plan", DEMO, "--choose", "third", "--write", marked).succeeded();
    return marked;
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
