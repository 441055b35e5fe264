package fingering.abc.syntax;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A tempo (ABC 2.1, field Q).
 *
 * @param words the words at it, empty for none
 * @param unit the note value counted, empty where only words stand there
 * @param perMinute how many of them a minute; 0 where only words stand there
 */
public record AbcTempo(String words, Optional<NoteValue> unit, int perMinute) {
  private static final int FASTEST = 1000;
  private static final Pattern WORDS = Pattern.compile("\"([^\"]*)\"");
  private static final Pattern VALUES =
      Pattern.compile("(\\d{1,3}/\\d{1,4}(?:\\s+\\d{1,3}/\\d{1,4}){0,3})\\s*=\\s*(\\d{1,4})");
  private static final Pattern VALUE = Pattern.compile("(\\d+)/(\\d+)");
  private static final Pattern BARE = Pattern.compile("\\d{1,4}");

  /**
   * Reads the tempo that comes next.
   *
   * @param unitLength the unit note length in quarter notes, which a bare number counts
   */
  public static AbcTempo read(LineCursor cursor, BigFraction unitLength) {
    cursor.takeBlanks();
    LineCursor start = cursor.back(0);
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
    throw wrong(text, start);
  }

  private static BigFraction sum(String values, LineCursor start) {
    BigFraction sum = BigFraction.ZERO;
    Matcher each = VALUE.matcher(values);
    while (each.find()) {
      int below = Integer.parseInt(each.group(2));
      if (below == 0) {
        throw wrong(values, start);
      }
      sum = sum.add(BigFraction.of(4 * Integer.parseInt(each.group(1)), below));
    }
    return sum;
  }

  /** A mark of several values, such as 1/4 3/8, is counted in quarter notes. */
  private static AbcTempo of(String words, BigFraction unit, int perMinute, LineCursor start) {
    Optional<NoteValue> counted = NoteValue.single(unit).filter(value -> value.dots() <= 1);
    int number = perMinute;
    if (counted.isEmpty()) {
      BigFraction quarters = unit.multiply(perMinute);
      number = (int) Math.round(Math.min(quarters.doubleValue(), 2.0 * FASTEST));
      counted = NoteValue.single(BigFraction.ONE);
    }
    if (number < 1 || number > FASTEST) {
      throw start.wrong(
          "a tempo of %d a minute is out of all range: write 1 to %d, as in Q:1/4=96."
              .formatted(number, FASTEST));
    }
    return new AbcTempo(words, counted, number);
  }

  private static AbcException wrong(String text, LineCursor start) {
    return start.wrong("'%s' is no tempo: write Q:1/4=96 or Q:\"Andante\" 3/8=60.".formatted(text));
  }
}
