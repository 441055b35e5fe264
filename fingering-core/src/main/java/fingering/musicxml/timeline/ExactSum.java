package fingering.musicxml.timeline;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** A cache of exact sums, which are slow and recur in every measure. */
final class ExactSum {
  private record Sum(BigFraction a, BigFraction b) {}

  private final Map<Sum, BigFraction> known = new HashMap<>();

  /** Returns the sum of two numbers. */
  BigFraction of(BigFraction a, BigFraction b) {
    return known.computeIfAbsent(new Sum(a, b), sum -> sum.a.add(sum.b));
  }
}
