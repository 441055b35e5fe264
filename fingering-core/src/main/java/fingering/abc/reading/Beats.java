package fingering.abc.reading;

import com.google.common.collect.ImmutableMap;
import fingering.abc.syntax.AbcMeter;
import org.apache.commons.numbers.fraction.BigFraction;

/** Lengths of measures as musicians count them. */
final class Beats {
  private static final ImmutableMap<BigFraction, String> PARTS =
      ImmutableMap.<BigFraction, String>builder()
          .put(BigFraction.of(1, 2), "\u00bd")
          .put(BigFraction.of(1, 3), "\u2153")
          .put(BigFraction.of(2, 3), "\u2154")
          .put(BigFraction.of(1, 4), "\u00bc")
          .put(BigFraction.of(3, 4), "\u00be")
          .put(BigFraction.of(1, 8), "\u215b")
          .put(BigFraction.of(3, 8), "\u215c")
          .put(BigFraction.of(5, 8), "\u215d")
          .put(BigFraction.of(7, 8), "\u215e")
          .buildOrThrow();

  private Beats() {}

  /**
   * A length and the one that the meter requires: {@code 3½ beats, 4 expected}.
   *
   * @param length the length in quarter notes
   * @param meter any but free meter
   */
  static String of(BigFraction length, AbcMeter meter) {
    BigFraction counted = counted(length, meter);
    BigFraction expected = counted(meter.length().orElseThrow(), meter);
    return "%s %s%s, %s expected"
        .formatted(
            number(counted),
            unit(meter.beatType()),
            counted.compareTo(BigFraction.ONE) > 0 ? "s" : "",
            number(expected));
  }

  private static BigFraction counted(BigFraction length, AbcMeter meter) {
    return length.multiply(meter.beatType()).divide(4);
  }

  private static String unit(int beatType) {
    return switch (beatType) {
      case 1 -> "whole note";
      case 2 -> "half note";
      case 4 -> "beat";
      case 8 -> "eighth";
      case 16 -> "sixteenth";
      case 32 -> "32nd";
      default -> "64th";
    };
  }

  private static String number(BigFraction number) {
    int whole = number.intValue();
    BigFraction part = number.subtract(whole);
    if (part.signum() == 0) {
      return Integer.toString(whole);
    }
    String sign = PARTS.get(part);
    String written = sign == null ? part.getNumerator() + "/" + part.getDenominator() : sign;
    return whole == 0 ? written : whole + (sign == null ? " " : "") + written;
  }
}
