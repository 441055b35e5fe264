package fingering.abc.syntax;

import com.google.common.base.Splitter;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A meter (ABC 2.1, field M).
 *
 * @param beats the upper number, which may be a sum such as {@code 2+3+2}; empty for free meter
 * @param beatType the lower number; 0 for free meter
 * @param symbol {@code common} or {@code cut} if it is printed as a symbol, otherwise empty
 */
public record AbcMeter(String beats, int beatType, String symbol) {
  /** Free meter: measures of any length. */
  public static final AbcMeter FREE = new AbcMeter("", 0, "");

  private static final int MOST = 64;
  private static final Pattern FIGURES =
      Pattern.compile("\\(?(\\d{1,2}(?:\\+\\d{1,2})*)\\)?/(\\d{1,3})");
  private static final BigFraction THREE_QUARTERS = BigFraction.of(3, 4);

  /** Reads the meter of a field M; empty if it is not valid. */
  public static Optional<AbcMeter> read(LineCursor cursor, Repairs repairs) {
    cursor.takeBlanks();
    LineCursor start = cursor.copy();
    String text = cursor.rest().replaceAll("\\s*([+/()])\\s*", "$1");
    switch (text) {
      case "C" -> {
        return Optional.of(new AbcMeter("4", 4, "common"));
      }
      case "C|" -> {
        return Optional.of(new AbcMeter("2", 2, "cut"));
      }
      case "none", "" -> {
        return Optional.of(FREE);
      }
      default -> {}
    }
    Matcher figures = FIGURES.matcher(text);
    if (figures.matches()) {
      AbcMeter meter = new AbcMeter(figures.group(1), Integer.parseInt(figures.group(2)), "");
      if (meter.sum() > 0 && meter.sum() <= MOST && isNoteValue(meter.beatType)) {
        return Optional.of(meter);
      }
    }
    repairs.add(
        start,
        "'%s' is not a meter, as in M:3/4, M:(2+3)/8, M:C, M:C| or M:none; it was left out"
            .formatted(text));
    return Optional.empty();
  }

  private static boolean isNoteValue(int number) {
    return number > 0 && number <= MOST && Integer.bitCount(number) == 1;
  }

  private int sum() {
    return Splitter.on('+').splitToStream(beats).mapToInt(Integer::parseInt).sum();
  }

  /** Returns the length of a full measure in quarter notes; empty for free meter. */
  public Optional<BigFraction> length() {
    return beatType == 0 ? Optional.empty() : Optional.of(BigFraction.of(4 * sum(), beatType));
  }

  /**
   * Returns the default unit note length, in quarter notes: a sixteenth if the meter, as a
   * fraction, is less than 0.75, otherwise an eighth (ABC 2.1, field L).
   */
  public BigFraction unit() {
    boolean small = beatType > 0 && BigFraction.of(sum(), beatType).compareTo(THREE_QUARTERS) < 0;
    return small ? BigFraction.of(1, 4) : BigFraction.of(1, 2);
  }

  /** Returns whether the meter is compound: 6/8, 9/8, 12/8. */
  boolean compound() {
    return beatType > 0 && sum() > 3 && sum() % 3 == 0 && !beats.contains("+");
  }

  /** Returns the meter as in a sentence: {@code 3/4}. */
  @Override
  public String toString() {
    return beatType == 0 ? "free meter" : beats + "/" + beatType;
  }
}
