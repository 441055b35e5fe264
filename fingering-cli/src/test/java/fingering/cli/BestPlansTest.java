package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.terminal.Screen;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class BestPlansTest {
  @TempDir Path folder;

  @Test
  void bestPlansAreSideBySideNamedByRank() {
    Session best = Session.of("plan", DEMO, "--best", 3, "--notes", "--costs").succeeded();

    assertThat(best.out())
        .containsPattern("note +best +2nd +3rd\n")
        .containsPattern("Points by rule +best +2nd +3rd\n")
        .containsPattern("\n2nd +\\d+ +\\d+ +\\d+ ");
  }

  @Test
  void bestPlansDifferInStringOrPositionAndAreInOrder() {
    JsonNode plans = Session.of("plan", DEMO, "--best", 4, "--format", "json").json().get("plans");

    assertThat(texts(plans, "name")).containsExactly("best", "2nd", "3rd", "4th");
    assertThat(entries(plans)).extracting(BestPlansTest::places).doesNotHaveDuplicates();
    assertThat(entries(plans)).extracting(plan -> plan.at("/cost/total").asLong()).isSorted();
    JsonNode free = Session.of("plan", DEMO, "--format", "json").json();
    assertThat(plans.get(0).get("notes")).isEqualTo(free.get("notes"));
  }

  private static List<String> places(JsonNode plan) {
    return entries(plan.get("notes")).stream()
        .map(
            note ->
                note.get("string").asText()
                    + (note.get("finger").asText().equals("0")
                        ? " open"
                        : " " + note.get("position").asText()))
        .toList();
  }

  @Test
  void plansThatDoNotFitSideBySideFollowBelow() {
    Session best =
        Session.of("plan", DEMO, "--best", 20, "--measures", "1-2", "--notes", "--costs")
            .succeeded();

    int columns = Math.max(80, Screen.columns());
    assertThat(best.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(columns));
    assertThat(best.out()).containsPattern("note.* 20th\n").containsPattern("Counts.* 20th\n");
  }

  @Test
  void allowedPositionsApplyToEveryPlanAndFewerPlansAreReported() throws IOException {
    Path score = TinyScore.titled("Low").part("Viola", "C3", "D3").in(folder);

    Session best = Session.of("plan", score, "--best", 5, "--allow", "1");

    assertThat(best.succeeded().out())
        .contains("No other plan uses a different string or position.")
        .doesNotContain("2nd");
  }
}
