package fingering.cli.text;

import fingering.cli.terminal.NumberRanges;
import java.util.List;
import java.util.SortedMap;

/** Joins successive measures into ranges. */
final class MeasureRanges {
  private MeasureRanges() {}

  /**
   * Returns ranges of measures: {@code 3–5}, {@code 9}.
   *
   * @param numbers the printed number of each measure, by the index of the measure in the part
   */
  static List<String> of(SortedMap<Integer, String> numbers) {
    return NumberRanges.of(numbers.keySet()).stream()
        .map(
            range ->
                numbers.get(range.from())
                    + (range.from() == range.to() ? "" : "–" + numbers.get(range.to())))
        .toList();
  }
}
