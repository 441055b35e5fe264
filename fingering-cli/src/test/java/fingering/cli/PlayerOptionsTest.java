package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PlayerOptionsTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Path IMKE = DOCS.resolve("examples").resolve("imke.yaml");

  @TempDir Path folder;

  private Path player(String... lines) throws IOException {
    return Files.writeString(folder.resolve("my.yaml"), String.join("\n", lines));
  }

  private static JsonNode plan(Object... options) {
    Object[] words = new Object[options.length + 4];
    words[0] = "plan";
    words[1] = DEMO;
    words[2] = "--format";
    words[3] = "json";
    System.arraycopy(options, 0, words, 4, options.length);
    return Session.of(words).json();
  }

  /** The lines from that one to the next empty one. */
  private static List<String> block(List<String> lines, String first) {
    int from = lines.indexOf(first);
    assertThat(from).isNotNegative();
    return lines.subList(from, lines.subList(from, lines.size()).indexOf("") + from);
  }

  @Test
  void documentationShowsTheFileAndWhatIsNew() throws IOException {
    List<String> page = Files.readAllLines(DOCS.resolve("player.md"));
    List<String> code =
        page.stream()
            .filter(line -> line.startsWith("    "))
            .map(line -> line.substring(4))
            .toList();
    List<String> file = Files.readAllLines(IMKE).stream().filter(line -> !line.isEmpty()).toList();
    assertThat(code).containsSubsequence(file);

    Session compare = Session.of("compare", DEMO, "--with-second", "--player", IMKE).succeeded();
    List<String> news = block(compare.lines(), "New to this player");
    assertThat(code).containsSubsequence(news);
    assertThat(news).anyMatch(line -> line.contains("2nd position"));
  }

  @Test
  void presetAndPlayerAreNamedInTextAndJson() throws IOException {
    Path player = player("preset: beginner");

    assertThat(Session.of("plan", DEMO).succeeded().lines().get(0))
        .endsWith("; preset: common-practice");
    assertThat(Session.of("plan", DEMO, "--why", "17.2.5").succeeded().lines())
        .contains("Preset: common-practice");
    assertThat(Session.of("compare", DEMO, "--player", player).out().replaceAll("\\s+", " "))
        .contains("preset: beginner; player:")
        .contains("my.yaml");
    assertThat(plan().get("scoring").toString()).isEqualTo("{\"preset\":\"common-practice\"}");
    assertThat(plan("--player", player).at("/scoring/player").asText()).endsWith("my.yaml");
    JsonNode compare = Session.of("compare", DEMO, "--player", player, "--format", "json").json();
    assertThat(compare.at("/scoring/preset").asText()).isEqualTo("beginner");
    assertThat(compare.at("/plans/0").has("new")).isTrue();
    assertThat(compare.at("/plans/0/new")).isEmpty();
    assertThat(plan().has("new")).isFalse();
  }

  @Test
  void jsonListsWhatIsNewWithItsNotes() throws IOException {
    JsonNode plan =
        plan("--player", player("positions: 1"), "--choose", "partly", "--preset", "intermediate");
    JsonNode position = plan.at("/new/0");

    assertThat(position.get("rule").asText()).isEqualTo("new-position");
    assertThat(position.get("what").asText()).isEqualTo("3rd position");
    List<JsonNode> notes =
        entries(position.get("notes")).stream()
            .map(note -> plan.get("notes").get(note.asInt()))
            .toList();
    assertThat(notes).extracting(note -> note.get("position").asText()).containsOnly("3");
    String from = notes.get(0).get("measure").asText();
    String to = notes.get(notes.size() - 1).get("measure").asText();
    assertThat(position.get("measures").toString()).isEqualTo("[\"%s–%s\"]".formatted(from, to));
    assertThat(texts(plan.at("/cost/rules"), "rule")).contains("new-position");
    assertThat(plan.get("new")).hasSize(1);
  }

  @Test
  void skillsNotYetLearnedAreAvoidedIfPossible() throws IOException {
    assertThat(plan("--preset", "common-practice").at("/counts/highestPosition").asText())
        .isEqualTo("3");
    JsonNode plan = plan("--preset", "common-practice", "--player", player("positions: 1"));
    assertThat(plan.at("/counts/highestPosition").asText()).isEqualTo("1");
    assertThat(plan.get("new")).isEmpty();
  }

  @Test
  void theFileGivesPresetHandAndSizeUnlessTheCommandLineDoes() throws IOException {
    Path player = player("preset: beginner", "hand: small", "size: 15", "instrument: viola");

    assertThat(plan("--player", player).get("cost"))
        .isEqualTo(plan("--preset", "beginner", "--hand", "small", "--size", "15").get("cost"));
    assertThat(plan("--player", player).get("size").asText()).isEqualTo("15");
    assertThat(plan("--player", player).at("/comfortableTempo/level").asText())
        .isEqualTo("beginner");
    JsonNode own =
        plan(
            "--player",
            player,
            "--preset",
            "intermediate",
            "--hand",
            "large",
            "--size",
            "16.5",
            "--instrument",
            "viola");
    assertThat(own.get("cost"))
        .isEqualTo(
            plan("--preset", "intermediate", "--hand", "large", "--size", "16.5").get("cost"));
    assertThat(own.at("/scoring/preset").asText()).isEqualTo("intermediate");
  }

  @Test
  void thePartForTheInstrumentOfTheStudentIsChosen() throws IOException {
    Path duo = TinyScore.titled("Duo").part("Violin", "A5").part("Viola", "G4").in(folder);

    assertThat(
            Session.of("plan", duo, "--player", player("instrument: viola"), "--format", "json")
                .json()
                .get("part")
                .asText())
        .isEqualTo("Viola");
    assertThat(
            Session.of("plan", duo, "--player", player("instrument: viola"), "--part", "Violin")
                .refused(2)
                .err())
        .contains("plays the viola, and the part 'Violin' is for the violin");
    Session asked =
        Session.of(
            "plan",
            duo,
            "--player",
            player("instrument: viola", "size: 15"),
            "--part",
            "1",
            "--instrument",
            "violin");
    assertThat(asked.succeeded().out()).contains("Violin, m. 1, ");
  }

  @Test
  void patternsOfAnotherInstrumentAreRefused() throws IOException {
    assertThat(Session.of("plan", DEMO, "--player", player("patterns: closed")).refused(2).err())
        .contains("lists no finger pattern for the viola: add some of 0-1, 1-2, 2-3, 3-4, apart");
  }

  @Test
  void badFilesAreRefusedInOneSentence() throws IOException {
    Path bad = player("# Imke", "positions: 1", "shifts: slide");

    assertThat(Session.of("plan", DEMO, "--player", bad).refused(2).err())
        .contains("my.yaml, line 3: 'slide' is not a shift; choose from rest, open string");
    assertThat(Session.of("compare", DEMO, "--player", folder.resolve("none")).refused(2).err())
        .contains("There is no file");
    assertThat(Session.of("compare", DEMO, "--player", folder).refused(2).err())
        .contains("is a folder");
    assertThat(Session.of("plan", DEMO, "--player", player("size: 9/8")).refused(2).err())
        .contains("my.yaml: no size '9/8' of the viola; choose");
    assertThat(Session.of("plan", DEMO, "--player", player("size: 9/8"), "--size", "15").code())
        .isZero();
    assertThat(Session.of("demo", "--player", player("positions: 1")).code()).isEqualTo(2);
  }
}
