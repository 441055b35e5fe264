package fingering.musicxml.element;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exact sums. They take long and come back in every measure, so that each is reckoned once. */
final class ExactSum {
  private record Sum(BigFraction a, BigFraction b) {}

  private final Map<Sum, BigFraction> known = new HashMap<>();

  BigFraction of(BigFraction a, BigFraction b) {
    return known.computeIfAbsent(new Sum(a, b), sum -> sum.a.add(sum.b));
  }
}
