package fingering.music;

import fingering.tables.FingeringException;
import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A metronome mark. What {@link #toString} writes {@link #parse} reads; two marks are equal where
 * their numbers are written with as many decimals, so that 60 and 60.0 are not.
 *
 * @param unit the note value counted
 * @param perMinute how many of them a minute, over 0 to 1000
 */
public record Tempo(BeatUnit unit, BigDecimal perMinute) {
  private static final int DIGITS = 20;
  private static final BigDecimal FASTEST = BigDecimal.valueOf(1000);

  /** The tempo taken where a score names none and none is asked for: quarter = 96. */
  public static final Tempo DEFAULT = new Tempo(BeatUnit.QUARTER, BigDecimal.valueOf(96));

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number is not over 0 and up to 1000, or has too many digits
   */
  public Tempo {
    // A number written with a vast exponent is refused before anything is computed with it.
    if (Math.abs((long) perMinute.scale()) > DIGITS || perMinute.precision() > DIGITS) {
      throw new FingeringException("a tempo is a plain number over 0 and up to 1000");
    }
    if (perMinute.signum() <= 0 || perMinute.compareTo(FASTEST) > 0) {
      throw new FingeringException(
          "a tempo of " + perMinute.toPlainString() + " a minute is not over 0 and up to 1000");
    }
  }

  /**
   * Reads {@code half=84} or {@code dotted-quarter=63}; a bare number counts quarter notes.
   *
   * @throws FingeringException if the text is no metronome mark
   */
  public static Tempo parse(String text) {
    int equals = text.indexOf('=');
    String number = text.substring(equals + 1).strip();
    BeatUnit unit =
        equals < 0 ? BeatUnit.QUARTER : BeatUnit.parse(text.substring(0, equals).strip());
    try {
      return new Tempo(unit, new BigDecimal(number));
    } catch (NumberFormatException e) {
      throw new FingeringException(
          "'" + text + "' is not a tempo; write a note value and a number, such as half=84", e);
    }
  }

  /** Quarter notes a minute, exact. */
  public BigFraction quartersPerMinute() {
    return fraction(perMinute).multiply(unit.quarters());
  }

  private static BigFraction fraction(BigDecimal value) {
    BigFraction unscaled = BigFraction.of(value.unscaledValue());
    return value.scale() >= 0
        ? unscaled.divide(java.math.BigInteger.TEN.pow(value.scale()))
        : unscaled.multiply(java.math.BigInteger.TEN.pow(-value.scale()));
  }

  /** {@code half=84}, without needless zeros. */
  @Override
  public String toString() {
    return unit + "=" + perMinute.stripTrailingZeros().toPlainString();
  }
}
