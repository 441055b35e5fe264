package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import java.util.Arrays;

/**
 * All ways to ask for some steps of each of several skills, up to a top; numbered, so that 0 asks
 * for nothing and the last for everything.
 */
final class SkillLevels {
  /** The most ways that are told apart. */
  private static final int MOST = 20_000;

  private final int[] tops;
  private final int[][] all;

  /**
   * @param tops the most steps of each skill
   * @throws FingeringException if that makes too many ways to keep apart
   */
  SkillLevels(ImmutableList<Integer> tops) {
    this.tops = tops.stream().mapToInt(Integer::intValue).toArray();
    long size = 1;
    for (int top : tops) {
      size *= top + 1L;
      if (size > MOST) {
        throw new FingeringException(
            "So much cannot be shared out among the pieces: there are more than "
                + MOST
                + " ways to show a part of it; ask for fewer notes or fewer skills at once.");
      }
    }
    all = new int[(int) size][];
    for (int i = 0; i < size; i++) {
      all[i] = digits(i);
    }
  }

  private int[] digits(int number) {
    int[] digits = new int[tops.length];
    int left = number;
    for (int j = 0; j < tops.length; j++) {
      digits[j] = left % (tops[j] + 1);
      left /= tops[j] + 1;
    }
    return digits;
  }

  int size() {
    return all.length;
  }

  /** The steps of each skill. */
  ImmutableList<Integer> get(int number) {
    return Arrays.stream(all[number]).boxed().collect(ImmutableList.toImmutableList());
  }

  /** The number of some steps, of each skill as many as the top at most. */
  int number(ImmutableList<Integer> steps) {
    int number = 0;
    int unit = 1;
    for (int j = 0; j < tops.length; j++) {
      number += Math.min(tops[j], steps.get(j)) * unit;
      unit *= tops[j] + 1;
    }
    return number;
  }

  /** The number of the steps that two pieces reach together, no higher than the top. */
  int together(int some, int others) {
    int sum = 0;
    int unit = 1;
    for (int j = 0; j < tops.length; j++) {
      sum += Math.min(tops[j], all[some][j] + all[others][j]) * unit;
      unit *= tops[j] + 1;
    }
    return sum;
  }

  /** Whether one asks for no more of anything than another. */
  boolean within(int one, int other) {
    for (int j = 0; j < tops.length; j++) {
      if (all[one][j] > all[other][j]) {
        return false;
      }
    }
    return true;
  }

  /** Whether every number one step higher costs more than this. */
  boolean rises(long[] costs, int number) {
    int unit = 1;
    for (int j = 0; j < tops.length; j++) {
      if (all[number][j] < tops[j] && costs[number + unit] <= costs[number]) {
        return false;
      }
      unit *= tops[j] + 1;
    }
    return true;
  }
}
