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

final class SectionOptionsTest {
  private static final Path EXAMPLES = Path.of("..", "docs", "examples");
  private static final Path IMKE = EXAMPLES.resolve("imke.yaml");
  private static final Path JONTE = EXAMPLES.resolve("jonte.yaml");

  @TempDir Path folder;

  private Path player(String name, String... lines) throws IOException {
    return Files.writeString(folder.resolve(name), String.join("\n", lines));
  }

  @Test
  void onePlanListsWhatIsNewToEachPlayer() {
    Session plan = Session.of("plan", DEMO, "--player", IMKE, "--player", JONTE).succeeded();
    assertThat(plan.out())
        .contains("preset: beginner;", "New to these players", "Playing together")
        .containsPattern("free choice, [^:]*imke\\.yaml: ")
        .containsPattern("free choice,\\s[^:]*jonte\\.yaml: ");
    assertThat(Session.of("plan", DEMO, "--player", IMKE).succeeded().out())
        .contains("New to this player")
        .doesNotContain("Playing together");
  }

  @Test
  void pageShowsTheSection() throws IOException {
    List<String> page =
        Files.readAllLines(Path.of("..", "docs", "player.md")).stream()
            .filter(line -> line.startsWith("    "))
            .map(line -> line.substring(4))
            .toList();
    Session compare = Session.of("compare", DEMO, "--player", IMKE, "--player", JONTE).succeeded();
    String shown = String.join(" ", page).replaceAll("\\s+", " ");
    String output =
        compare.out().replaceAll("\\s+", " ").replace(EXAMPLES.toString(), "docs/examples");
    int from = output.indexOf("New to these players");
    int to = output.indexOf("Playing together");
    assertThat(from).isNotNegative();
    assertThat(shown).contains(output.substring(from, to).strip());
  }

  @Test
  void jsonListsNewSkillsByPlayer() throws IOException {
    Path low = player("low.yaml", "positions: 1");
    Path third = player("third.yaml", "positions: 1, 3", "shifts: rest");
    JsonNode plan =
        Session.of(
                "plan",
                DEMO,
                "--player",
                low,
                "--player",
                third,
                "--choose",
                "third",
                "--format",
                "json")
            .json();
    assertThat(plan.at("/scoring/players")).hasSize(2);
    List<JsonNode> news = entries(plan.get("new"));
    assertThat(news)
        .filteredOn(one -> one.get("player").asText().endsWith("low.yaml"))
        .extracting(one -> one.get("what").asText())
        .containsExactly("3rd position");
    assertThat(texts(plan.get("new"), "rule")).contains("new-position");
    long charged =
        entries(plan.at("/cost/rules")).stream()
            .filter(rule -> rule.get("rule").asText().equals("new-position"))
            .mapToLong(rule -> rule.get("amount").asLong())
            .sum();
    assertThat(charged).isEqualTo(plan.at("/counts/notesByPosition/3").asLong());
  }

  @Test
  void smallestHandIsUsedUnlessTheCommandLineOverridesIt() throws IOException {
    Path small = player("small.yaml", "hand: small");
    Path large = player("large.yaml", "hand: large");
    JsonNode both =
        Session.of("plan", DEMO, "--player", large, "--player", small, "--format", "json").json();
    assertThat(both.get("notes"))
        .isEqualTo(
            Session.of("plan", DEMO, "--hand", "small", "--format", "json").json().get("notes"));
    JsonNode asked =
        Session.of(
                "plan",
                DEMO,
                "--player",
                large,
                "--player",
                small,
                "--hand",
                "large",
                "--format",
                "json")
            .json();
    assertThat(asked.get("cost"))
        .isEqualTo(
            Session.of("plan", DEMO, "--hand", "large", "--format", "json").json().get("cost"));
  }

  @Test
  void sizeIsThatOfTheSmallestReach() throws IOException {
    Path short15 = player("a.yaml", "instrument: viola", "size: 15", "hand: 105mm");
    Path long165 = player("b.yaml", "instrument: viola", "size: 16.5", "hand: 105mm");
    JsonNode plan =
        Session.of("plan", DEMO, "--player", short15, "--player", long165, "--format", "json")
            .json();
    assertThat(plan.get("size").asText()).isEqualTo("16.5");
    JsonNode asked =
        Session.of(
                "plan",
                DEMO,
                "--player",
                short15,
                "--player",
                long165,
                "--size",
                "14",
                "--format",
                "json")
            .json();
    assertThat(asked.get("size").asText()).isEqualTo("14");
  }

  @Test
  void playersOfTwoInstrumentsAreRejected() throws IOException {
    Path viola = player("viola.yaml", "instrument: viola");
    Path cello = player("cello.yaml", "instrument: cello");
    assertThat(Session.of("plan", DEMO, "--player", viola, "--player", cello).refused(2).err())
        .contains("a section plays one instrument, and these players play the viola and the cello");
  }
}
