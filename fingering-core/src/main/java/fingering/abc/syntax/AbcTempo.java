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
  private static final Pattern BARE = Pattern.compile("\\d{1,4}");

  /**
   * Reads the tempo of a field Q.
   *
   * @param unitLength the unit note length in quarter notes, which a number alone counts
   */
  public static AbcTempo read(LineCursor cursor, BigFraction unitLength) {
    cursor.takeBlanks();
    LineCursor start = cursor.copy();
    String text = cursor.rest();
    Matcher quoted = WORDS.matcher(text);
    String words = quoted.find() ? quoted.group(1).strip() : "";
    String mark = quoted.replaceFirst("").strip();
    if (mark.isEmpty() && !words.isEmpty()) {
      return new AbcTempo(words, Optional.empty(), 0);
    }
    Matcher values = VALUES.matcher(mark);
    if (values.matches()) {
      return of(words, sum(values.group(1), start), Integer.parseInt(values.group(2)), start);
    }
    if (BARE.matcher(mark).matches()) {
      return of(words, unitLength, Integer.parseInt(mark), start);
    }
    throw error(text, start);
  }

  private static BigFraction sum(String values, LineCursor start) {
    BigFraction sum = BigFraction.ZERO;
    Matcher each = VALUE.matcher(values);
    while (each.find()) {
      int denominator = Integer.parseInt(each.group(2));
      if (denominator == 0) {
        throw error(values, start);
      }
      sum = sum.add(BigFraction.of(4 * Integer.parseInt(each.group(1)), denominator));
    }
    return sum;
  }

  /** A mark of several note values, such as 1/4 3/8, is converted to quarter notes. */
  private static AbcTempo of(String words, BigFraction unit, int perMinute, LineCursor start) {
    Optional<NoteValue> counted = NoteValue.single(unit).filter(value -> value.dots() <= 1);
    int number = perMinute;
    if (counted.isEmpty()) {
      BigFraction quarters = unit.multiply(perMinute);
      number = (int) Math.round(Math.min(quarters.doubleValue(), 2.0 * FASTEST));
      counted = NoteValue.single(BigFraction.ONE);
    }
    if (number < 1 || number > FASTEST) {
      throw start.error(
          "a tempo of %d per minute is out of range: write 1 to %d, as in Q:1/4=96."
              .formatted(number, FASTEST));
    }
    return new AbcTempo(words, counted, number);
  }

  private static AbcException error(String text, LineCursor start) {
    return start.error(
        "'%s' is not a tempo: write Q:1/4=96 or Q:\"Andante\" 3/8=60.".formatted(text));
  }
}
