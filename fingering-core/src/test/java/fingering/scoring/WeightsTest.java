package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Taken;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Instrument.HandKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
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

  /** Rules that matter most to students of the positions, who practise the fourth finger. */
  private static final Set<String> PRACTISED =
      Set.of("fourth-finger", "open-string", "open-string-descending", "trill");

  @Test
  void aLineGivesARuleItsPoints() {
    Weights weights = Weights.parse("w", "# mine\n\nshift: 20 # expensive\ncrossing: 0\n");
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
          shift: -1         | 'shift' must be a whole number from 0 to 999999, such as 'shift: 20', not '-1'
          shift: 1.5        | 'shift' must be a whole number from 0 to 999999
          shift: 1_000      | 'shift' must be a whole number from 0 to 999999
          shift: 0x10       | 'shift' must be a whole number from 0 to 999999
          shift: 1000000    | 'shift' must be a whole number from 0 to 999999
          shift: 3 4        | 'shift' must be a whole number from 0 to 999999
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
    ImmutableList<Grip> grips = ImmutableList.of(Taken.on("violin").by("A4", 2, "0", "1st"));
    assertThat(own.costs(NoteContext.of(moment), grips)).isEqualTo(ImmutableLongArray.of(7));
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
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Weights(ImmutableMap.of("everything", points)))
        .withMessage("the weight of the rule 'everything' is " + points + ", not 0 to 999999");
  }

  @Test
  void everyRuleHasAWeightAndEveryWeightARule() {
    assertThat(StandardRules.all())
        .extracting(CostRule::id)
        .containsExactlyInAnyOrderElementsOf(points("common-practice").keySet());
  }

  @Test
  void everyPresetNamesExactlyTheRules() {
    assertThat(Weights.presets()).startsWith("common-practice").contains("beginner");
    for (String preset : Weights.presets()) {
      Set<String> rules = points("common-practice").keySet();
      assertThat(points(preset).keySet()).as(preset).isEqualTo(rules);
      assertThat(Weights.preset(preset).points().keySet())
          .as(preset)
          .allMatch(
              key -> rules.contains(key.substring(key.indexOf('.') + 1)) || key.endsWith(Habit.ID));
    }
    assertThat(Weights.preset("common-practice")).isEqualTo(Weights.commonPractice());
  }

  /** The points of a preset for each rule, without those for one kind of hand. */
  private static Map<String, Long> points(String preset) {
    Map<String, Long> points = new HashMap<>(Weights.preset(preset).points());
    points.keySet().removeIf(key -> key.contains(".") || key.equals(Habit.ID));
    return points;
  }

  // A student begins in one place and learns to leave it: common practice, no source
  @Test
  void intermediateWeightsAreBetweenBeginnerAndCommonPractice() {
    Map<String, Long> first = points("beginner");
    Map<String, Long> then = points("intermediate");
    Map<String, Long> usual = points("common-practice");
    assertThat(usual.keySet())
        .filteredOn(rule -> first.containsKey(rule) && then.containsKey(rule))
        .filteredOn(rule -> !PRACTISED.contains(rule))
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
    Map<String, Long> usual = points("common-practice");
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
            "w, line 3: there is no key 'less' in a weights file; choose from everything, more,"
                + " habit, violin.everything, violin.more, violin.habit, cello.everything,"
                + " cello.more, cello.habit, bass.everything, bass.more, bass.habit,"
                + " violin.habit-network, cello.habit-network, bass.habit-network");
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
    assertThat(StandardRules.all())
        .allSatisfy(rule -> assertThat(all.points()).containsKey(rule.id()));
    // the points for all hands replace those for one hand, also of the other weights
    assertThat(all.points()).doesNotContainKey("cello.shift").containsKey("cello.crossing");
    assertThat(all.points().get("crossing"))
        .isEqualTo(Weights.commonPractice().points().get("crossing"));
    assertThat(Weights.commonPractice().orElse(own)).isEqualTo(Weights.commonPractice());
  }

  private static final CostRule SHIFT = rule("shift");

  private static CostRule rule(String id) {
    return StandardRules.all().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void aHandMayHavePointsOfItsOwn() {
    Weights weights = Weights.parse("w", "shift: 20\ncello.shift: 15\n", StandardRules.all());
    assertThat(weights.of(SHIFT, HandKind.CELLO)).isEqualTo(15);
    assertThat(weights.of(SHIFT, HandKind.VIOLIN)).isEqualTo(20);
    assertThat(weights.of(SHIFT, HandKind.BASS)).isEqualTo(20);
  }

  @Test
  void pointsForOneHandOnlyLeaveTheOthersWithout() {
    Weights weights = Weights.parse("w", "cello.shift: 15", StandardRules.all());
    assertThat(weights.of(SHIFT, HandKind.CELLO)).isEqualTo(15);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> weights.of(SHIFT, HandKind.VIOLIN))
        .withMessage("no weight is given for the rule 'shift'; use Weights.with(rule, points)");
  }

  @Test
  void theScoringUsesThePointsOfTheHand() {
    ImmutableList<CostRule> rules = ImmutableList.of(new Everything("everything"));
    Scoring own = Scoring.of(rules, Weights.parse("w", "everything: 7\ncello.everything: 3"));
    assertThat(costOfD(own, "viola", 4, "1")).isEqualTo(7);
    assertThat(costOfD(own, "cello", 2, "0")).isEqualTo(3);
  }

  private static long costOfD(Scoring scoring, String instrument, int string, String finger) {
    Moment moment = Music.on(instrument).notes("D3/1").moments().get(0);
    Grip grip = Taken.on(instrument).by("D3", string, finger, "1st");
    return scoring.costs(NoteContext.of(moment), ImmutableList.of(grip)).get(0);
  }

  @Test
  void plainPointsOfAUserReplaceThoseOfAPresetForOneHand() {
    Weights preset = Weights.parse("p", "shift: 20\ncello.shift: 15\nbass.crossing: 4");
    Weights all = Weights.parse("w", "shift: 1").orElse(preset);
    assertThat(all.of(SHIFT, HandKind.CELLO)).isEqualTo(1);
    assertThat(all.points()).containsEntry("bass.crossing", 4L).doesNotContainKey("cello.shift");
    Weights cello = Weights.parse("w", "cello.shift: 2").orElse(preset);
    assertThat(cello.of(SHIFT, HandKind.CELLO)).isEqualTo(2);
    assertThat(cello.of(SHIFT, HandKind.VIOLIN)).isEqualTo(20);
    Weights both = Weights.parse("w", "shift: 1\ncello.shift: 2").orElse(preset);
    assertThat(both.of(SHIFT, HandKind.CELLO)).isEqualTo(2);
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
              assertThat(HandKind.values())
                  .allSatisfy(
                      hand -> assertThat(Weights.commonPractice().of(rule, hand)).isNotNegative());
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
            Stream.concat(StandardRules.all().stream().map(CostRule::id), Stream.of(Habit.ID))
                .toList());
  }
}
