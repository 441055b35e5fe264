package fingering.music;

import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A metronome mark. {@link #parse} reads the text of {@link #toString}. Trailing zeros do not
 * count: 60 and 60.0 are the same tempo.
 *
 * @param unit the note value counted
 * @param perMinute number of them per minute, above 0, up to 1000; kept without trailing decimal
 *     zeros
 */
public record Tempo(BeatUnit unit, BigDecimal perMinute) {
  private static final int DIGITS = 20;
  private static final BigDecimal MAX_PER_MINUTE = BigDecimal.valueOf(1000);

  /** The tempo used when neither the score nor the user gives one: quarter = 96. */
  public static final Tempo DEFAULT = new Tempo(BeatUnit.QUARTER, BigDecimal.valueOf(96));

  /**
   * Checks the components, and removes trailing zeros of the number.
   *
   * @throws FingeringException if the number is not above 0 and at most 1000, or has more than 20
   *     digits
   */
  public Tempo {
    // Refuse huge exponents before computing: 1e999999999 would fill the memory as plain digits.
    if (Math.abs((long) perMinute.scale()) > DIGITS || perMinute.precision() > DIGITS) {
      throw new FingeringException("a tempo is a plain number above 0 and at most 1000");
    }
    if (perMinute.signum() <= 0 || perMinute.compareTo(MAX_PER_MINUTE) > 0) {
      throw new FingeringException(
          "a tempo of "
              + perMinute.toPlainString()
              + " per minute is not above 0 and at most 1000");
    }
    BigDecimal stripped = perMinute.stripTrailingZeros();
    perMinute = stripped.setScale(Math.max(0, stripped.scale()));
  }

  /**
   * Reads {@code half=84} or {@code dotted-quarter=63}; a bare number counts quarter notes.
   *
   * @throws FingeringException if the text is not a metronome mark
   */
  public static Tempo parse(String text) {
    return parse(text, BeatUnit.QUARTER);
  }

  /**
   * Reads {@code half=84} or {@code dotted-quarter=63}; a bare number counts the given note value.
   *
   * @param usual what a bare number counts
   * @throws FingeringException if the text is not a metronome mark
   */
  public static Tempo parse(String text, BeatUnit usual) {
    int equals = text.indexOf('=');
    String number = text.substring(equals + 1).strip();
    BeatUnit unit = equals < 0 ? usual : BeatUnit.parse(text.substring(0, equals).strip());
    try {
      return new Tempo(unit, new BigDecimal(number));
    } catch (NumberFormatException e) {
      throw new FingeringException(
          "'" + text + "' is not a tempo; write a note value and a number, such as half=84", e);
    }
  }

  /** Quarter notes per minute, exact. */
  public BigFraction quartersPerMinute() {
    return fraction(perMinute).multiply(unit.quarters());
  }

  private static BigFraction fraction(BigDecimal value) {
    return BigFraction.of(value.unscaledValue()).divide(BigInteger.TEN.pow(value.scale()));
  }

  /** For example {@code half=84} or {@code quarter=66.5}. */
  @Override
  public String toString() {
    return unit + "=" + perMinute.toPlainString();
  }
}
