package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.cli.command.ExitCode;
import fingering.lesson.PlanName;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names and positions may be typed in several forms. */
class NamesAsTypedTest {
  private static final Path MARCH = Path.of("..", "docs", "examples", "lanterns.musicxml");

  private static String printed(String typed) {
    Object[] words =
        java.util.Arrays.stream(typed.strip().split(" +", -1))
            .map(word -> word.equals("DEMO") ? DEMO : word.equals("MARCH") ? MARCH : word)
            .toArray();
    Session session = Session.of(words);
    assertThat(session.err()).as(typed).isEmpty();
    assertThat(session.code()).isIn(ExitCode.DONE, ExitCode.FINDINGS);
    return session.answer();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Plan DEMO --preset Beginner             | plan DEMO --preset beginner",
        "plan DEMO --level ADVANCED             | plan DEMO --level advanced",
        "plan DEMO --part VIOLA --instrument Viola  | plan DEMO --part Viola --instrument viola",
        "compare DEMO --format JSON                 | compare DEMO --format json",
        "check MARCH --level Intermediate           | check MARCH --level intermediate",
        "check MARCH --show RISKY                   | check MARCH --show risky",
        "check --print-level Beginner            | check --print-level beginner",
        "chart Bass --tuning SOLO                   | chart bass --tuning solo",
        "MAN Plan                                   | man plan",
        "plan DEMO --choose 3                       | plan DEMO --choose third",
        "plan DEMO --choose III                     | plan DEMO --choose third",
        "plan DEMO --choose 2                       | plan DEMO --choose second",
        "plan DEMO --choose FIRST                   | plan DEMO --choose 1st",
        "plan DEMO --allow First,third              | plan DEMO --allow 1,3",
        "plan DEMO --show third=8 --stay 1st@1-4    | plan DEMO --show 3=8 --stay 1@1-4",
        "chart viola --position Third               | chart viola --position 3"
      })
  void bothFormsGiveTheSame(String typed, String usual) {
    assertThat(printed(typed)).isEqualTo(printed(usual));
  }

  @Test
  void theHigherPlanOfACelloMayBeNamedByItsPosition() {
    String tune = "M:4/4\nL:1/4\nK:C clef=bass\nE F G F|E F G F|G F E F|E F G2|]";
    String fourth = chosen(tune, "fourth");
    assertThat(fourth).contains("4th position").isEqualTo(chosen(tune, "third"));
    assertThat(Session.of("plan", DEMO, "--choose", "fourth").refused(2).err())
        .contains("choose first, third (it stays in 3rd)");
  }

  private static String chosen(String tune, String plan) {
    return Session.of("plan", "--abc", tune, "--instrument", "cello", "--choose", plan)
        .succeeded()
        .answer();
  }

  @ParameterizedTest
  @ValueSource(strings = {"free", "first", "2", "3rd", "IV", "thumb", "half", "2½"})
  void aPlanNameIsReadBack(String typed) {
    PlanName plan = PlanName.parse(typed);
    assertThat(PlanName.parse(plan.toString())).isEqualTo(plan);
  }

  @Test
  void plansMayBeNamedByTheHeadingsOfCompare() {
    assertThat(PlanName.parse("3rd position")).isEqualTo(PlanName.parse("third"));
    assertThat(PlanName.parse("1st to 3rd").position()).isEqualTo(Optional.of(Position.SECOND));
    assertThat(PlanName.parse("free choice").isFree()).isTrue();
    assertThatExceptionOfType(FingeringException.class).isThrownBy(() -> PlanName.parse("best"));
  }
}
