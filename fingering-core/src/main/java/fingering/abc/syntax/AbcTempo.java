package fingering.abc.syntax;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A tempo (ABC 2.1, field Q).
 *
 * @param words its words, empty for none
 * @param unit the note value that is counted; empty for words only
 * @param perMinute note values per minute; 0 for words only
 */
public record AbcTempo(String words, Optional<NoteValue> unit, int perMinute) {
  private static final int FASTEST = 1000;
  private static final Pattern WORDS = Pattern.compile("\"([^\"]*)\"");
  private static final Pattern VALUES =
      Pattern.compile("(\\d{1,3}/\\d{1,4}(?:\\s+\\d{1,3}/\\d{1,4}){0,3})\\s*=\\s*(\\d{1,4})");
  private static final Pattern VALUE = Pattern.compile("(\\d+)/(\\d+)");

  /** The old form, which counts unit note lengths: C=120, C3=40. */
  private static final Pattern UNITS = Pattern.compile("C(\\d{0,2})\\s*=\\s*(\\d{1,4})");

  private static final Pattern BARE = Pattern.compile("\\d{1,4}");

  /**
   * Reads the tempo of a field Q; empty if it has neither words nor a tempo.
   *
   * @param unitLength the unit note length in quarter notes, which a number alone counts
   */
  public static Optional<AbcTempo> read(
      LineCursor cursor, BigFraction unitLength, Repairs repairs) {
    cursor.takeBlanks();
    LineCursor start = cursor.copy();
    String text = cursor.rest();
    Matcher quoted = WORDS.matcher(text);
    String words = quoted.find() ? quoted.group(1).strip() : "";
    String mark = quoted.replaceFirst("").strip();
    if (mark.isEmpty() && !words.isEmpty()) {
      return Optional.of(new AbcTempo(words, Optional.empty(), 0));
    }
    Matcher values = VALUES.matcher(mark);
    Matcher units = UNITS.matcher(mark);
    Optional<AbcTempo> tempo = Optional.empty();
    if (values.matches()) {
      tempo = of(words, sum(values.group(1)), Integer.parseInt(values.group(2)));
    } else if (units.matches()) {
      int count = units.group(1).isEmpty() ? 1 : Integer.parseInt(units.group(1));
      tempo = of(words, unitLength.multiply(count), Integer.parseInt(units.group(2)));
    } else if (BARE.matcher(mark).matches()) {
      tempo = of(words, unitLength, Integer.parseInt(mark));
    }
    if (tempo.isPresent()) {
      return tempo;
    }
    repairs.add(
        start,
        "'%s' is not a tempo of 1 to %d per minute, as in Q:1/4=96 or Q:\"Andante\" 3/8=60; it was left out"
            .formatted(text, FASTEST));
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of(new AbcTempo(words, Optional.empty(), 0));
  }

  /** Returns the sum of note values in quarter notes, 0 if one of them is not a fraction. */
  private static BigFraction sum(String values) {
    BigFraction sum = BigFraction.ZERO;
    Matcher each = VALUE.matcher(values);
    while (each.find()) {
      int denominator = Integer.parseInt(each.group(2));
      if (denominator == 0) {
        return BigFraction.ZERO;
      }
      sum = sum.add(BigFraction.of(4 * Integer.parseInt(each.group(1)), denominator));
    }
    return sum;
  }

  /** A mark of several note values, such as 1/4 3/8, is converted to quarter notes. */
  private static Optional<AbcTempo> of(String words, BigFraction unit, int perMinute) {
    Optional<NoteValue> counted = NoteValue.single(unit).filter(value -> value.dots() <= 1);
    int number = perMinute;
    if (counted.isEmpty()) {
      BigFraction quarters = unit.multiply(perMinute);
      number = (int) Math.round(Math.min(quarters.doubleValue(), 2.0 * FASTEST));
      counted = NoteValue.single(BigFraction.ONE);
    }
    if (number < 1 || number > FASTEST) {
      return Optional.empty();
    }
    return Optional.of(new AbcTempo(words, counted, number));
  }
}
