package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Maps;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.player.Extension;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.player.ShiftKind;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;

/**
 * A scoring that uses everything: every rule charges, also those on new skills, each kind of hand
 * has points of its own, and a habit of random numbers.
 */
public final class EveryRule {
  private static final double LARGE = 150;

  private EveryRule() {}

  /** The rules, for a player who has learned little. */
  public static ImmutableList<CostRule> rules() {
    return StandardRules.forPlayer(
        Player.UNKNOWN
            .withPositions(ImmutableSet.of(Position.FIRST, Position.THIRD))
            .withPatterns(ImmutableSet.of(FingerPattern.SECOND_THIRD, FingerPattern.CLOSED))
            .withExtensions(ImmutableSet.of(Extension.FOURTH_FORWARD))
            .withShifts(ImmutableSet.of(ShiftKind.REST)));
  }

  /** Points for every rule; every third rule has other points for each hand. */
  public static Weights weights() {
    Map<String, Long> points = new LinkedHashMap<>();
    int rule = 0;
    for (CostRule each : rules()) {
      long usual = 1 + Weights.commonPractice().of(each, HandKind.VIOLIN);
      points.put(each.id(), usual);
      int more = 1;
      for (HandKind hand : HandKind.values()) {
        more++;
        if (rule % 3 == 0) {
          points.put(Weights.key(hand, each.id()), usual * more);
        }
      }
      rule++;
    }
    points.put(Habit.ID, 1L);
    return new Weights(ImmutableMap.copyOf(points), habit(7));
  }

  /** A habit of random numbers for every hand; many placements cost hundreds of points. */
  public static Habit habit(long seed) {
    Random random = new Random(seed);
    return new Habit(
        Arrays.stream(HandKind.values())
            .collect(Maps.toImmutableEnumMap(hand -> hand, hand -> numbers(random))));
  }

  private static ImmutableDoubleArray numbers(Random random) {
    double[] numbers = random.doubles(HabitNetwork.SIZE, -1, 1).toArray();
    HabitNetwork.scale(numbers, LARGE);
    return ImmutableDoubleArray.copyOf(numbers);
  }

  /** The rules with these weights. */
  public static Scoring scoring() {
    return Scoring.of(rules(), weights());
  }
}
