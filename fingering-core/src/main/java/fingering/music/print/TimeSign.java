package fingering.music.print;

import com.google.common.collect.ImmutableList;

/**
 * A printed time signature.
 *
 * @param symbol how it is printed
 * @param terms its fractions, printed with a plus sign between them; empty without meter
 */
public record TimeSign(Symbol symbol, ImmutableList<Term> terms) {

  /** How a time signature is printed. */
  public enum Symbol {
    /** As numbers. */
    NUMBERS,
    /** As the C of 4/4. */
    COMMON,
    /** As the C with a stroke of 2/2. */
    CUT,
    /** As the upper number only. */
    SINGLE_NUMBER,
    /** Without meter: nothing is printed, or an X. */
    SENZA_MISURA
  }

  /**
   * A fraction.
   *
   * @param upper the upper number as printed, for example {@code 3} or {@code 3+2}
   * @param lower the lower number, at least 1
   */
  public record Term(String upper, int lower) {}
}
