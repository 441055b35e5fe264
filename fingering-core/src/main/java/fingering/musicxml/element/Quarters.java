package fingering.musicxml.element;

import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/** Fast comparison of exact times in quarter notes. */
public final class Quarters {

  /** Compares exactly. Most pairs of times are so far apart that no exact calculation is needed. */
  public static final Comparator<BigFraction> ORDER = Quarters::compare;

  // Well above the rounding error of a double, even a million quarter notes into a part.
  private static final double SURELY_APART = 1e-6;

  /** Whole numbers with up to this many bits are exact as doubles. */
  private static final int EXACT_BITS = 53;

  private Quarters() {}

  /** Returns the nearest double. */
  public static double value(BigFraction time) {
    return time.getNumerator().bitLength() <= EXACT_BITS
            && time.getDenominator().bitLength() <= EXACT_BITS
        ? (double) time.getNumerator().longValue() / time.getDenominator().longValue()
        : time.doubleValue();
  }

  /** Compares two times exactly. */
  public static int compare(BigFraction a, BigFraction b) {
    double left = value(a);
    double right = value(b);
    return Math.abs(left - right) > SURELY_APART ? Double.compare(left, right) : a.compareTo(b);
  }
}
