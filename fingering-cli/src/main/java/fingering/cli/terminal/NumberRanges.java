package fingering.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Numbers one after another, drawn together. */
public final class NumberRanges {
  /** From one number to another, both within. */
  public record Run(int from, int to) {}

  private NumberRanges() {}

  /** The runs of ascending numbers. */
  public static List<Run> of(Iterable<Integer> ascending) {
    List<Run> runs = new ArrayList<>();
    for (int number : ascending) {
      int last = runs.size() - 1;
      if (last >= 0 && runs.get(last).to() + 1 == number) {
        runs.set(last, new Run(runs.get(last).from(), number));
      } else {
        runs.add(new Run(number, number));
      }
    }
    return runs;
  }
}
