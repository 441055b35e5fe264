package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import java.util.Arrays;

/**
 * All combinations of levels of several skills, from 0 to a target level of each. They are numbered
 * in mixed radix: 0 is level 0 of every skill, and the last is the target of every skill.
 */
final class LevelCombinations {
  /** The most combinations. */
  private static final int MAX_COMBINATIONS = 20_000;

  private final int[] targets;

  /** The levels of each skill, by number of the combination. */
  private final int[][] all;

  /**
   * Enumerates the combinations.
   *
   * @param targets the target level of each skill
   * @throws FingeringException if there are more than {@value #MAX_COMBINATIONS} combinations
   */
  LevelCombinations(ImmutableList<Integer> targets) {
    this.targets = targets.stream().mapToInt(Integer::intValue).toArray();
    long size = 1;
    for (int target : targets) {
      size *= target + 1L;
      if (size > MAX_COMBINATIONS) {
        throw new FingeringException(
            "The skills cannot be distributed over the pieces: there are more than "
                + MAX_COMBINATIONS
                + " combinations of their amounts; ask for fewer notes or fewer skills at once.");
      }
    }
    all = new int[(int) size][];
    for (int i = 0; i < size; i++) {
      all[i] = digits(i);
    }
  }

  private int[] digits(int number) {
    int[] digits = new int[targets.length];
    int rest = number;
    for (int j = 0; j < targets.length; j++) {
      digits[j] = rest % (targets[j] + 1);
      rest /= targets[j] + 1;
    }
    return digits;
  }

  int size() {
    return all.length;
  }

  /** The levels of each skill in a combination. */
  ImmutableList<Integer> get(int number) {
    return Arrays.stream(all[number]).boxed().collect(ImmutableList.toImmutableList());
  }

  /** The number of the combination of some levels, each limited to its target. */
  int number(ImmutableList<Integer> levels) {
    int number = 0;
    int unit = 1;
    for (int j = 0; j < targets.length; j++) {
      number += Math.min(targets[j], levels.get(j)) * unit;
      unit *= targets[j] + 1;
    }
    return number;
  }

  /** The number of the sum of two combinations, each level limited to its target. */
  int sum(int one, int other) {
    int sum = 0;
    int unit = 1;
    for (int j = 0; j < targets.length; j++) {
      sum += Math.min(targets[j], all[one][j] + all[other][j]) * unit;
      unit *= targets[j] + 1;
    }
    return sum;
  }

  /** Whether no level of one combination is above that of another. */
  boolean atMost(int one, int other) {
    for (int j = 0; j < targets.length; j++) {
      if (all[one][j] > all[other][j]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether a combination costs less than each one that is a level higher in one skill.
   *
   * @param costs the cost of each combination, by number
   */
  boolean costsLessThanHigher(long[] costs, int number) {
    int unit = 1;
    for (int j = 0; j < targets.length; j++) {
      if (all[number][j] < targets[j] && costs[number + unit] <= costs[number]) {
        return false;
      }
      unit *= targets[j] + 1;
    }
    return true;
  }
}
