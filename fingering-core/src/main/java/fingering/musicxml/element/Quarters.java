package fingering.musicxml.element;

import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/** Quick answers about exact times in quarter notes. */
public final class Quarters {

  /** Compares exactly; most pairs of times lie so far apart that no exact reckoning is needed. */
  public static final Comparator<BigFraction> ORDER = Quarters::compare;

  // Far above the rounding of a double, even a million quarter notes into a part.
  private static final double SURELY_APART = 1e-6;

  /** Up to this many bits a whole number is exact as a double. */
  private static final int EXACT_BITS = 53;

  private Quarters() {}

  /** The nearest double. */
  public static double value(BigFraction time) {
    return time.getNumerator().bitLength() <= EXACT_BITS
            && time.getDenominator().bitLength() <= EXACT_BITS
        ? (double) time.getNumerator().longValue() / time.getDenominator().longValue()
        : time.doubleValue();
  }

  public static int compare(BigFraction a, BigFraction b) {
    double left = value(a);
    double right = value(b);
    return Math.abs(left - right) > SURELY_APART ? Double.compare(left, right) : a.compareTo(b);
  }
}
