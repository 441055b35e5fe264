package fingering.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Joins consecutive numbers into ranges. */
public final class NumberRanges {
  /**
   * Consecutive numbers.
   *
   * @param from the first number
   * @param to the last number
   */
  public record Range(int from, int to) {}

  private NumberRanges() {}

  /** The ranges of ascending numbers. */
  public static List<Range> of(Iterable<Integer> ascending) {
    List<Range> ranges = new ArrayList<>();
    for (int number : ascending) {
      int last = ranges.size() - 1;
      if (last >= 0 && ranges.get(last).to() + 1 == number) {
        ranges.set(last, new Range(ranges.get(last).from(), number));
      } else {
        ranges.add(new Range(number, number));
      }
    }
    return ranges;
  }
}
