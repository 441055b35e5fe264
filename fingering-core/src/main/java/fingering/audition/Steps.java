package fingering.audition;

import com.google.common.collect.ImmutableList;

/**
 * All ways to ask for some steps of each of several skills, up to a top; numbered, so that 0 asks
 * for nothing and the last for everything.
 */
final class Steps {
  private final ImmutableList<Integer> tops;
  private final ImmutableList<ImmutableList<Integer>> all;

  /**
   * @param tops the most steps of each skill
   */
  Steps(ImmutableList<Integer> tops) {
    this.tops = tops;
    int size = tops.stream().mapToInt(top -> top + 1).reduce(1, Math::multiplyExact);
    ImmutableList.Builder<ImmutableList<Integer>> built =
        ImmutableList.builderWithExpectedSize(size);
    for (int i = 0; i < size; i++) {
      ImmutableList.Builder<Integer> one = ImmutableList.builder();
      int left = i;
      for (int top : tops) {
        one.add(left % (top + 1));
        left /= top + 1;
      }
      built.add(one.build());
    }
    all = built.build();
  }

  int size() {
    return all.size();
  }

  ImmutableList<Integer> get(int number) {
    return all.get(number);
  }

  /** The number of the steps that two pieces reach together, no higher than the top. */
  int together(int number, ImmutableList<Integer> more) {
    int sum = 0;
    int unit = 1;
    for (int j = 0; j < tops.size(); j++) {
      sum += Math.min(tops.get(j), all.get(number).get(j) + more.get(j)) * unit;
      unit *= tops.get(j) + 1;
    }
    return sum;
  }

  /** The numbers one step higher in one skill. */
  ImmutableList<Integer> above(int number) {
    ImmutableList.Builder<Integer> above = ImmutableList.builder();
    int unit = 1;
    for (int j = 0; j < tops.size(); j++) {
      if (all.get(number).get(j) < tops.get(j)) {
        above.add(number + unit);
      }
      unit *= tops.get(j) + 1;
    }
    return above.build();
  }

  /** Whether the first asks for no more of anything than the second. */
  static boolean within(ImmutableList<Integer> some, ImmutableList<Integer> others) {
    for (int j = 0; j < some.size(); j++) {
      if (some.get(j) > others.get(j)) {
        return false;
      }
    }
    return true;
  }
}
