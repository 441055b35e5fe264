package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Taken;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeightsTest {
  /** A custom rule that charges every note once. */
  record Everything(String id) implements NoteRule {
    @Override
    public String name() {
      return "Everything";
    }

    @Override
    public String explanation() {
      return "Every note is charged.";
    }

    @Override
    public String unit() {
      return "note";
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      return 1;
    }
  }

  @Test
  void aLineGivesARuleItsPoints() {
    Weights weights = Weights.parse("w", "# mine\n\n  shift: 20 # expensive\ncrossing: 0\n");
    assertThat(weights.points()).containsEntry("shift", 20L).containsEntry("crossing", 0L);
    assertThat(weights.points()).hasSize(2);
    assertThat(Weights.parse("w", "{\"shift\": 20, \"crossing\": 0}")).isEqualTo(weights);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          shift             | a weights file consists of keys with values, such as 'shift: 20'
          shift:            | 'shift' has no value; fill it in, such as 'shift: 20', or remove it
          shift: -1         | 'shift' is a whole number from 0 to 999999, such as 'shift: 20', not '-1'
          shift: 1.5        | 'shift' is a whole number from 0 to 999999
          shift: 1_000      | 'shift' is a whole number from 0 to 999999
          shift: 0x10       | 'shift' is a whole number from 0 to 999999
          shift: 1000000    | 'shift' is a whole number from 0 to 999999
          shift: 3 4        | 'shift' is a whole number from 0 to 999999
          shift: [3]        | 'shift' has a single value, such as 'shift: 20'
          Shift: 3          | 'Shift' is not a key; write it in lower case, such as 'shift: 20'
          shift = 3         | write a colon after the key, 'shift: ', instead of '='
          """)
  void aLineThatGivesNoPointsIsRefusedByItsNumber(String line, String why) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("my.yaml", "# head\n\n" + line))
        .withMessageStartingWith("my.yaml, line 3: " + why);
  }

  @ParameterizedTest
  @ValueSource(strings = {": 3", "shift", "shift 3", "shift = 3"})
  void aLineWithoutAColonAfterItsKeyIsRefused(String line) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("my.yaml", "# head\ncrossing: 1\n" + line))
        .withMessageStartingWith("my.yaml, line 3: ");
  }

  @Test
  void aRuleThatIsGivenTwiceIsRefusedByNameAndLine() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("my.yaml", "shift: 1\n\nshift: 2"))
        .withMessage(
            "my.yaml, line 3: the key 'shift' is given twice, first in line 1; write it once");
  }

  @Test
  void aRuleWithoutAWeightIsRefusedByName() {
    Weights weights = Weights.parse("w", "shift: 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Scoring.of(ImmutableList.of(new Everything("everything")), weights))
        .withMessageContaining("'everything'");
  }

  @Test
  void aCustomRuleChargesByItsWeight() {
    Scoring own =
        Scoring.of(
            ImmutableList.of(new Everything("everything")), Weights.parse("w", "everything: 7"));
    Moment moment = Music.violin().notes("A4/1").moments().get(0);
    assertThat(own.cost(PacedNote.of(moment), Taken.on("violin").by("A4", 2, "0", "1st")))
        .isEqualTo(7);
  }

  /** A rule of two kinds, which would be charged twice. */
  private interface TwoKinds extends NoteRule, TransitionRule {
    @Override
    default int lookBack() {
      return 1;
    }
  }

  @Test
  void aRuleOfTwoKindsIsRefusedByName() {
    CostRule both =
        new TwoKinds() {
          @Override
          public String id() {
            return "both";
          }

          @Override
          public String name() {
            return "Both";
          }

          @Override
          public String explanation() {
            return "A note and a transition.";
          }

          @Override
          public String unit() {
            return "note";
          }

          @Override
          public long amount(NoteContext context, Grip grip) {
            return 1;
          }

          @Override
          public long amount(Transition transition, Grip before, Grip now) {
            return 1;
          }
        };
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Scoring.of(ImmutableList.of(both), Weights.parse("w", "both: 1")))
        .withMessage("the rule 'both' is of several kinds; make it several rules");
  }

  @ParameterizedTest
  @ValueSource(longs = {-1, 1_000_000})
  void aWeightOutOfRangeIsRefusedByTheNameOfItsRule(long points) {
    Weights weights = new Weights(ImmutableMap.of("everything", points));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Scoring.of(ImmutableList.of(new Everything("everything")), weights))
        .withMessage("the weight of the rule 'everything' is " + points + ", not 0 to 999999");
  }

  @Test
  void everyRuleHasAWeightAndEveryWeightARule() {
    assertThat(StandardRules.all())
        .extracting(CostRule::id)
        .containsExactlyInAnyOrderElementsOf(Weights.commonPractice().points().keySet());
  }

  @Test
  void everyPresetNamesExactlyTheRules() {
    assertThat(Weights.presets()).startsWith("common-practice").contains("beginner");
    for (String preset : Weights.presets()) {
      assertThat(Weights.preset(preset).points().keySet())
          .as(preset)
          .containsExactlyInAnyOrderElementsOf(Weights.commonPractice().points().keySet());
    }
    assertThat(Weights.preset("common-practice")).isEqualTo(Weights.commonPractice());
  }

  /** The points of a preset, which has them for every rule. */
  private static Map<String, Long> points(String preset) {
    Map<String, Long> points = Weights.preset(preset).points();
    assertThat(points.keySet())
        .as(preset)
        .containsExactlyInAnyOrderElementsOf(Weights.commonPractice().points().keySet());
    return points;
  }

  // A student begins in one place and learns to leave it: common practice, no source
  @Test
  void intermediateWeightsAreBetweenBeginnerAndCommonPractice() {
    Map<String, Long> first = points("beginner");
    Map<String, Long> then = points("intermediate");
    Map<String, Long> usual = Weights.commonPractice().points();
    assertThat(usual.keySet())
        .filteredOn(rule -> !rule.equals("fourth-finger"))
        .allSatisfy(
            rule ->
                assertThat(then.get(rule))
                    .isBetween(
                        Math.min(first.get(rule), usual.get(rule)),
                        Math.max(first.get(rule), usual.get(rule))));
    assertThat(first.get("shift")).isGreaterThan(then.get("shift"));
  }

  /** A pattern that is learned for one note can make at most two pairs new. */
  @Test
  void aNewPatternCostsAtLeastTwoNewSpacings() {
    for (String preset : Weights.presets()) {
      Map<String, Long> points = points(preset);
      assertThat(points.get("new-finger-pattern"))
          .as(preset)
          .isGreaterThanOrEqualTo(2 * points.get("new-finger-spacing"));
    }
  }

  // Open strings are in tune by themselves, the fourth finger is learned after them and then
  // practised: common practice, no source
  @Test
  void theFourthFingerCostsMostForBeginnersAndLeastForIntermediatePlayers() {
    Map<String, Long> first = points("beginner");
    Map<String, Long> then = points("intermediate");
    Map<String, Long> usual = Weights.commonPractice().points();
    assertThat(first.get("fourth-finger")).isGreaterThan(usual.get("fourth-finger"));
    assertThat(then.get("fourth-finger")).isLessThan(usual.get("fourth-finger"));
    assertThat(first.get("open-string")).isLessThan(then.get("open-string"));
  }

  @Test
  void anUnknownPresetIsRefusedWithTheKnownOnes() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.preset("loud"))
        .withMessageContaining("'loud'")
        .withMessageContaining("common-practice, beginner, intermediate");
  }

  @Test
  void anUnknownRuleIsRefusedByLine() {
    ImmutableList<CostRule> rules =
        ImmutableList.of(new Everything("everything"), new Everything("more"));
    assertThat(Weights.parse("w", "more: 1\neverything: 2", rules).points()).hasSize(2);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("w", "more: 1\n\nless: 2", rules))
        .withMessage(
            "w, line 3: there is no key 'less' in a weights file; choose from everything, more");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("w", "more: 1\nevrything: 2", rules))
        .withMessage(
            "w, line 2: there is no key 'evrything'; did you mean 'everything', such as"
                + " 'everything: 20'?");
  }

  @Test
  void otherWeightsSupplyMissingRules() {
    Weights own = Weights.parse("w", "shift: 1");
    Weights all = own.orElse(Weights.commonPractice());

    assertThat(all.points().get("shift")).isEqualTo(1);
    assertThat(all.points().keySet()).isEqualTo(Weights.commonPractice().points().keySet());
    assertThat(all.points().get("crossing"))
        .isEqualTo(Weights.commonPractice().points().get("crossing"));
    assertThat(Weights.commonPractice().orElse(own)).isEqualTo(Weights.commonPractice());
  }

  @Test
  void everyRuleHasANameAnExplanationAndAUnit() {
    assertThat(StandardRules.all())
        .allSatisfy(
            rule -> {
              assertThat(rule.id()).matches("[a-z]+(-[a-z]+)*");
              assertThat(rule.name()).matches("\\p{Lu}.*[^.]");
              assertThat(rule.explanation()).matches("\\p{Lu}.*\\.");
              assertThat(rule.unit()).isNotBlank();
              assertThat(rule.lookBack()).isBetween(0, 1);
              assertThat(Weights.commonPractice().of(rule)).isNotNegative();
            });
    assertThat(StandardRules.all()).extracting(CostRule::name).doesNotHaveDuplicates();
  }

  @Test
  void theScoringLooksBackAsFarAsTheRuleThatLooksBackFurthest() {
    assertThat(StandardRules.commonPractice().lookBack()).isEqualTo(1);
    Weights weights = Weights.parse("w", "everything: 1");
    Scoring own = Scoring.of(ImmutableList.of(new Everything("everything")), weights);
    assertThat(own.lookBack()).isZero();
    assertThat(own.rules()).hasSize(1);
  }

  @Test
  void theHandbookListsExactlyTheRules() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "scoring.md"));
    String table =
        page.substring(page.indexOf("| Rule |"), page.indexOf("\n\n", page.indexOf("| Rule |")));

    assertThat(
            table
                .lines()
                .skip(2)
                .flatMap(row -> Arrays.stream(row.split("\\|", -1)[1].strip().split(", ", -1))))
        .containsExactlyInAnyOrderElementsOf(
            StandardRules.all().stream().map(CostRule::id).toList());
  }
}
