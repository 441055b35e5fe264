package fingering.music;

import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A time in the part as a player names it: measure and beat. {@link #parse} reads the text of
 * {@link #toString} if the measure number contains neither points nor spaces.
 *
 * @param measure the measure number as printed
 * @param beat the beat as the player counts it, 1 for the first, in decimals; kept without trailing
 *     zeros
 */
public record MeasureBeat(String measure, BigDecimal beat) {
  private static final Pattern WRITTEN = Pattern.compile("([^.\\s]+)\\.(\\d{1,3}(?:\\.\\d{1,6})?)");

  /** Tolerance in beats for a whole number, or for two decimals and more. */
  private static final double FINE = 0.006;

  /** Tolerance in beats for one decimal: 2.3 means 2.33, a third of a beat; 2.2 is not 2.25. */
  private static final double COARSE = 0.04;

  /**
   * Removes trailing zeros of the beat.
   *
   * @throws IllegalArgumentException if the beat is below 0
   */
  public MeasureBeat {
    if (beat.signum() < 0) {
      throw new IllegalArgumentException("a beat below 0");
    }
    BigDecimal stripped = beat.stripTrailingZeros();
    beat = stripped.setScale(Math.max(0, stripped.scale()));
  }

  /**
   * Reads measure and beat: {@code 17.2}, or {@code 17.2.5} for beat 2.5.
   *
   * @throws FingeringException if the text is not of that form
   */
  public static MeasureBeat parse(String text) {
    Matcher matcher = WRITTEN.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' is not a measure and beat; write 17.2, or 17.2.5 for beat 2.5");
    }
    return new MeasureBeat(matcher.group(1), new BigDecimal(matcher.group(2)));
  }

  /**
   * The index of the moment at that time in a passage, from 0. Where a note has grace notes, it is
   * the index of the note itself.
   *
   * @throws FingeringException if no note begins at that time; the message is one sentence and
   *     names the nearest moment
   */
  public int indexIn(Passage passage) {
    List<Moment> moments = passage.moments();
    return IntStream.range(0, moments.size())
        .filter(m -> moments.get(m).place().measure().equals(measure) && matches(moments.get(m)))
        .boxed()
        .min(
            Comparator.comparing((Integer m) -> moments.get(m).grace())
                .thenComparingDouble(m -> distance(moments.get(m))))
        .orElseThrow(() -> noneAt(passage));
  }

  private boolean matches(Moment moment) {
    return distance(moment) <= (beat.scale() == 1 ? COARSE : FINE);
  }

  private double distance(Moment moment) {
    return Math.abs(moment.place().beat().doubleValue() - beat.doubleValue());
  }

  private FingeringException noneAt(Passage passage) {
    Moment nearest =
        passage.moments().stream()
            .min(
                Comparator.comparingLong((Moment moment) -> measureDistance(passage, moment))
                    .thenComparingDouble(this::distance))
            .orElseThrow();
    return new FingeringException(
        "No note begins in measure "
            + measure
            + ", beat "
            + beat.toPlainString()
            + "; the nearest note begins in "
            + nearest.place()
            + ".");
  }

  /**
   * Compares indices if the passage has the measure, else printed numbers; if a number is not
   * numeric, the first measure counts as nearest.
   */
  private long measureDistance(Passage passage, Moment moment) {
    int index = moment.place().measureIndex();
    return passage.measures().stream()
        .filter(candidate -> candidate.number().equals(measure))
        .findFirst()
        .map(found -> (long) Math.abs(found.index() - index))
        .orElseGet(
            () ->
                number() >= 0 && number(moment.place().measure()) >= 0
                    ? Math.abs(number() - number(moment.place().measure()))
                    : index);
  }

  /** The measure number; -1 if it is not a number. */
  long number() {
    return number(measure);
  }

  private static long number(String printed) {
    return printed.matches("\\d{1,9}") ? Long.parseLong(printed) : -1;
  }

  /** For example {@code 17.2}, or {@code 17.2.5} for beat 2.5. */
  @Override
  public String toString() {
    return measure + "." + beat.toPlainString();
  }
}
