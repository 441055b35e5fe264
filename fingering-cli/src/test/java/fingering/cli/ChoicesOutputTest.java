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

final class ChoicesOutputTest {
  @TempDir Path folder;

  @Test
  void fingeringsAreSideBySideWithTheirEffects() {
    Session choices = Session.of("plan", DEMO, "--choices", "28").succeeded();

    assertThat(choices.out())
        .containsPattern("note +best +2nd +3rd +4th\n")
        .containsPattern("\n  28 +1  F4")
        .doesNotContainPattern("\n  27 ")
        .containsPattern("best: \\d+ points, as in 'free choice', comes from ")
        .containsPattern("2nd: \\d+ points more, comes from \\w+ and continues in \\w+;")
        .contains("stop if it hurts");
    int columns = Math.max(80, Screen.columns());
    assertThat(choices.lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(columns));
  }

  @Test
  void jsonHasCostAndChangesOfEveryFingering() {
    JsonNode plan =
        Session.of("plan", DEMO, "--choices", "21-22", "--best", 3, "--format", "json").json();
    JsonNode choices = plan.get("choices");
    assertThat(choices.get("from").asText()).isEqualTo("21");
    assertThat(choices.get("to").asText()).isEqualTo("22");
    List<JsonNode> ways = entries(choices.get("ways"));
    assertThat(ways).hasSize(3);
    assertThat(ways.get(0).get("total")).isEqualTo(plan.at("/cost/total"));
    assertThat(ways.get(0).get("changesBefore")).isEmpty();
    assertThat(ways).extracting(way -> way.get("more").asLong()).isSorted();
    for (JsonNode way : ways) {
      assertThat(way.get("total").asLong() - plan.at("/cost/total").asLong())
          .isEqualTo(way.get("more").asLong())
          .isEqualTo(
              entries(way.get("rules")).stream().mapToLong(r -> r.get("more").asLong()).sum());
      assertThat(texts(way.get("taken"), "note")).isEqualTo(numbers(choices.get("notes")));
      for (JsonNode change : way.get("changesBefore")) {
        JsonNode note = plan.get("notes").get(change.get("note").asInt());
        assertThat(note.get("measure").asInt()).isLessThan(21);
      }
      for (JsonNode change : way.get("changesAfter")) {
        JsonNode note = plan.get("notes").get(change.get("note").asInt());
        assertThat(note.get("measure").asInt()).isGreaterThan(22);
      }
    }
  }

  private static List<String> numbers(JsonNode array) {
    return entries(array).stream().map(JsonNode::asText).toList();
  }

  /** A fingering fixed note by note is a demand like others, and must cost the same. */
  @Test
  void fingeringCostsAsMuchAsThePlanThatDemandsIt() {
    JsonNode plan =
        Session.of("plan", DEMO, "--choices", "22", "--best", 4, "--format", "json").json();
    JsonNode way = plan.at("/choices/ways/3");
    Object[] words = new Object[4 + 2 * way.get("taken").size()];
    words[0] = "plan";
    words[1] = DEMO;
    words[2] = "--format";
    words[3] = "json";
    int at = 4;
    for (JsonNode taken : way.get("taken")) {
      JsonNode note = plan.get("notes").get(taken.get("note").asInt());
      boolean open = taken.get("finger").asText().equals("0");
      words[at++] = "--fix";
      words[at++] =
          "22.%s=%s%s"
              .formatted(
                  1 + note.get("onset").asDouble(),
                  taken.get("string").asText(),
                  open ? "/0" : "@" + taken.get("position").asText());
    }
    assertThat(Session.of(words).json().at("/cost/total")).isEqualTo(way.get("total"));
  }

  @Test
  void missingAlternativesAreReported() throws IOException {
    Path score = TinyScore.titled("Low").part("Viola", "C3", "D3").in(folder);
    assertThat(Session.of("plan", score, "--choices", "1").succeeded().out())
        .contains("The plan allows no other fingering here.");
    assertThat(Session.of("plan", score, "--choices", "2", "--allow", "1,half").succeeded().out())
        .contains("The plan allows only 2 fingerings here.");
  }

  @Test
  void missingMeasuresAreRejected() {
    assertThat(Session.of("plan", DEMO, "--choices", "99").refused(2).err())
        .contains("There is no measure 99 in Viola");
    Session.of("plan", DEMO, "--choices", "1-2-3").refused(2);
    Session.of("plan", DEMO, "--choices", "1", "--why", "1.1").refused(2);
    Session.of("plan", DEMO, "--choices", "1", "--best", 99).refused(2);
  }
}
