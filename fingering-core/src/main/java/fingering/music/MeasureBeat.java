package fingering.music;

import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A time in the part as a player names it. What {@link #toString} writes {@link #parse} reads,
 * where the measure's number has neither points nor spaces.
 *
 * @param measure the measure's number as printed
 * @param beat the beat as the player counts it, from 1, in decimals
 */
public record MeasureBeat(String measure, BigDecimal beat) {
  private static final Pattern WRITTEN = Pattern.compile("([^.\\s]+)\\.(\\d{1,3}(?:\\.\\d{1,6})?)");

  /** How far a beat may lie from what is written of it in two decimals or more, or in none. */
  private static final double FINE = 0.006;

  /** The same for one decimal: 2.3 is the second third of a beat, but 2.2 is no quarter of it. */
  private static final double COARSE = 0.04;

  /**
   * Reads a measure and a beat: {@code 17.2}, {@code 17.2.5}.
   *
   * @throws FingeringException if the text is none
   */
  public static MeasureBeat parse(String text) {
    Matcher matcher = WRITTEN.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' is no measure and beat; write them as 17.2, or 17.2.5 for beat 2.5");
    }
    return new MeasureBeat(matcher.group(1), new BigDecimal(matcher.group(2)));
  }

  /**
   * The index of the moment at that time in a passage, from 0. Where grace notes stand before a
   * note, it is the note.
   *
   * @throws FingeringException if no note begins then; the message is one sentence and names the
   *     nearest moment
   */
  public int in(Passage passage) {
    List<Moment> moments = passage.moments();
    return IntStream.range(0, moments.size())
        .filter(m -> moments.get(m).place().measure().equals(measure) && at(moments.get(m)))
        .boxed()
        .min(
            Comparator.comparing((Integer m) -> moments.get(m).grace())
                .thenComparingDouble(m -> away(moments.get(m))))
        .orElseThrow(() -> none(passage));
  }

  private boolean at(Moment moment) {
    return away(moment) <= (beat.scale() == 1 ? COARSE : FINE);
  }

  private double away(Moment moment) {
    return Math.abs(moment.place().beat().doubleValue() - beat.doubleValue());
  }

  private FingeringException none(Passage passage) {
    Moment nearest =
        passage.moments().stream()
            .min(
                Comparator.comparingLong((Moment moment) -> measuresAway(passage, moment))
                    .thenComparingDouble(this::away))
            .orElseThrow();
    return new FingeringException(
        "No note begins in measure "
            + measure
            + ", beat "
            + beat.toPlainString()
            + "; the nearest that does stands in "
            + nearest.place()
            + ".");
  }

  /** By index where the passage has the measure, else by number, else the first is nearest. */
  private long measuresAway(Passage passage, Moment moment) {
    int index = moment.place().measureIndex();
    return passage.measures().stream()
        .filter(candidate -> candidate.number().equals(measure))
        .findFirst()
        .map(found -> (long) Math.abs(found.index() - index))
        .orElseGet(
            () ->
                number(measure) >= 0 && number(moment.place().measure()) >= 0
                    ? Math.abs(number(measure) - number(moment.place().measure()))
                    : index);
  }

  private static long number(String printed) {
    return printed.matches("\\d{1,9}") ? Long.parseLong(printed) : -1;
  }

  /** {@code 17.2}, {@code 17.2.5}. */
  @Override
  public String toString() {
    return measure + "." + beat.toPlainString();
  }
}
