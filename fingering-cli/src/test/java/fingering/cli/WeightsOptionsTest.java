package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.google.common.collect.ObjectArrays;
import fingering.scoring.Weights;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WeightsOptionsTest {
  @TempDir Path folder;

  private static String text(Weights weights) {
    return weights.points().entrySet().stream()
        .map(entry -> entry.getKey() + ": " + entry.getValue() + "\n")
        .collect(Collectors.joining());
  }

  private Path written(String text) throws IOException {
    return Files.writeString(folder.resolve("my-weights.yaml"), text);
  }

  @Test
  void weightsOfOnesOwnThatAreThoseOfAPresetMakeItsPlan() throws IOException {
    Path own = written("\uFEFF# mine\n" + text(Weights.preset("beginner")));

    Session mine = Session.of("plan", DEMO, "--weights", own, "--level", "beginner").succeeded();
    Session theirs = Session.of("plan", DEMO, "--preset", "beginner").succeeded();
    assertThat(belowTheHeading(mine)).isEqualTo(belowTheHeading(theirs));
    assertThat(mine.out()).contains("my-weights.yaml");
    assertThat(theirs.lines().get(0)).endsWith("preset: beginner");
    assertThat(Session.of("plan", DEMO, "--preset", "common-practice").answer())
        .isEqualTo(Session.of("plan", DEMO).succeeded().answer());
  }

  private static String belowTheHeading(Session session) {
    return session.answer().substring(session.answer().indexOf("\n\n"));
  }

  @Test
  void everyRulesPointsAreThoseOfThePreset() {
    JsonNode plan =
        Session.of("compare", DEMO, "--preset", "intermediate", "--format", "json").json();

    for (JsonNode rule : entries(plan.at("/plans/1/cost/rules"))) {
      assertThat(Weights.preset("intermediate").points())
          .containsEntry(rule.get("rule").asText(), rule.get("weight").asLong());
    }
  }

  @Test
  void demoTakesWeightsToo() {
    assertThat(Session.of("demo", "--preset", "beginner").succeeded().answer())
        .isEqualTo(Session.of("compare", DEMO, "--with-second", "--preset", "beginner").answer());
  }

  @Test
  void thoseWhoBeginStayInFirstPosition() {
    JsonNode plan = Session.of("plan", DEMO, "--preset", "beginner", "--format", "json").json();
    JsonNode usual = Session.of("plan", DEMO, "--format", "json").json();

    assertThat(plan.at("/counts/shifts").asInt())
        .isLessThanOrEqualTo(usual.at("/counts/shifts").asInt());
    assertThat(plan.at("/counts/highestPosition").asText()).isEqualTo("1");
  }

  @Test
  void veryHighWeightsStillAddUp() throws IOException {
    Path own = written(text(Weights.commonPractice()).replaceAll(": \\d+", ": 999999"));

    assertThat(Session.of("compare", DEMO, "--weights", own, "--costs").succeeded().out())
        .contains("Total");
  }

  @Test
  void unknownRuleIsRefusedByItsLine() throws IOException {
    Path own = written("# mine\nshft: 3\n" + text(Weights.commonPractice()));

    assertThat(Session.of("plan", DEMO, "--weights", own).refused(2).err())
        .contains(
            "my-weights.yaml, line 2: there is no key 'shft'; did you mean 'shift', such as 'shift: 20'?");
  }

  @Test
  void aFileMayGivePointsToSomeRulesAndLeaveTheRestToAPreset() throws IOException {
    Path own = written("shift: 7\n");

    JsonNode plan =
        Session.of("plan", DEMO, "--weights", own, "--preset", "beginner", "--format", "json")
            .json();

    assertThat(plan.at("/scoring/preset").asText()).isEqualTo("beginner");
    assertThat(plan.at("/scoring/weights").asText()).endsWith("my-weights.yaml");
    for (JsonNode rule : entries(plan.at("/cost/rules"))) {
      String id = rule.get("rule").asText();
      assertThat(rule.get("weight").asLong())
          .as(id)
          .isEqualTo(id.equals("shift") ? 7 : Weights.preset("beginner").points().get(id));
    }
    assertThat(Session.of("plan", DEMO, "--weights", own).succeeded().out())
        .containsPattern("my-weights.yaml, and\\s+common-practice\\s+for\\s+the\\s+rest");
  }

  @Test
  void whoPlansByPointsOfTheirOwnIsAsQuickAsThePresetSays() throws IOException {
    Path own = written(text(Weights.commonPractice()));

    assertThat(comfortable("--weights", own, "--preset", "beginner"))
        .isEqualTo(comfortable("--level", "beginner"))
        .isLessThan(comfortable("--weights", own));
  }

  private static double comfortable(Object... options) {
    Object[] asked = ObjectArrays.concat(new Object[] {"plan", DEMO}, options, Object.class);
    JsonNode plan =
        Session.of(ObjectArrays.concat(asked, new Object[] {"--format", "json"}, Object.class))
            .json();
    return plan.at("/comfortableTempo/factor").asDouble();
  }

  @Test
  void fileThatCannotBeReadIsNamed() throws IOException {
    assertThat(Session.of("plan", DEMO, "--weights", folder.resolve("none")).refused(2).err())
        .contains("There is no file", "none");
    assertThat(Session.of("plan", DEMO, "--weights", folder).refused(2).err())
        .contains("is a folder");
    assertThat(Session.of("plan", DEMO, "--weights", written("shift = 3")).refused(2).err())
        .contains(
            "my-weights.yaml, line 1: write a colon after the key, 'shift: ', instead of '='");
  }
}
