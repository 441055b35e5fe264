package fingering.bench;

import com.google.common.collect.ImmutableList;
import com.google.common.math.Quantiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Times in microseconds by benchmark and round. Every round measures each benchmark once, so that
 * other load on the machine affects all of them; times of the same round are compared, and the
 * median over the rounds is the figure.
 *
 * <p>The odd and the even rounds serve as two runs: how far their medians differ shows how far the
 * figure can be trusted.
 */
final class Figures {
  private final TreeMap<String, List<Double>> micros = new TreeMap<>();

  /** Adds the time of a benchmark in the present round. */
  void add(String name, double time) {
    micros.computeIfAbsent(name, any -> new ArrayList<>()).add(time);
  }

  /** The names of the benchmarks, sorted. */
  Set<String> names() {
    return micros.keySet();
  }

  /** The time of a benchmark, multiplied by a factor. */
  Figure time(String name, double factor) {
    return new Figure(micros.get(name).stream().map(time -> time * factor).toList());
  }

  /** The ratio of two benchmarks, round by round. */
  Figure ratio(String of, String to) {
    List<Double> above = micros.get(of);
    List<Double> below = micros.get(to);
    return new Figure(
        IntStream.range(0, above.size()).mapToObj(i -> above.get(i) / below.get(i)).toList());
  }

  /**
   * A quantity measured in several rounds.
   *
   * @param rounds one value for each round, at least one
   */
  record Figure(ImmutableList<Double> rounds) {
    Figure(List<Double> rounds) {
      this(ImmutableList.copyOf(rounds));
    }

    /** The median over the rounds. */
    double median() {
      return Quantiles.median().compute(rounds);
    }

    /** How far the medians of the odd and the even rounds differ: 0.1 is 10 %; 0 for one round. */
    double disagreement() {
      if (rounds.size() == 1) {
        return 0;
      }
      double odd = half(0);
      double even = half(1);
      return Math.max(odd, even) / Math.min(odd, even) - 1;
    }

    private double half(int first) {
      return Quantiles.median()
          .compute(
              IntStream.range(0, rounds.size())
                  .filter(i -> i % 2 == first)
                  .mapToObj(rounds::get)
                  .toList());
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%s (odd and even rounds differ by %.0f %%)",
          String.format(Locale.ROOT, median() < 100 ? "%.3g" : "%.0f", median()),
          disagreement() * 100);
    }
  }
}
