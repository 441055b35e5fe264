package fingering.demand;

import com.google.common.collect.Range;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Some measures of a passage, both ends within, or all of it.
 *
 * @param ends the first and the last as printed; empty for the whole passage
 */
public record MeasureSpan(Optional<Ends> ends) {
  /** The whole passage. */
  public static final MeasureSpan WHOLE = new MeasureSpan(Optional.empty());

  private static final Pattern WRITTEN = Pattern.compile("([^\\s-]+)(?:\\s*[-–]\\s*([^\\s-]+))?");

  /**
   * The numbers of the first and the last measure as printed.
   *
   * @param first the number of the first
   * @param last the number of the last; it may be the same
   */
  public record Ends(String first, String last) {}

  /** From one measure to another, as printed. */
  public static MeasureSpan of(String first, String last) {
    return new MeasureSpan(Optional.of(new Ends(first, last)));
  }

  /**
   * Reads measures as printed: {@code 9-16}, {@code 9}.
   *
   * @throws FingeringException if the text is none
   */
  public static MeasureSpan parse(String text) {
    Matcher matcher = WRITTEN.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' are no measures; write them as printed, 9-16 or 9");
    }
    String first = matcher.group(1);
    return of(first, Optional.ofNullable(matcher.group(2)).orElse(first));
  }

  /**
   * The indices of these measures in the part, from 0.
   *
   * @throws FingeringException if the passage has no such measure, or they stand the other way
   *     round
   */
  public Range<Integer> measures(Passage passage) {
    if (ends.isEmpty()) {
      return Range.all();
    }
    String first = ends.get().first();
    String last = ends.get().last();
    int from = index(passage, first, measure -> measure.number().equals(first));
    int to =
        index(passage, last, measure -> measure.number().equals(last) && measure.index() >= from);
    return Range.closed(from, to);
  }

  /**
   * The moments of a passage that begin in these measures.
   *
   * @throws FingeringException if the passage has no such measure, or they stand the other way
   *     round
   */
  public BitSet in(Passage passage) {
    Range<Integer> measures = measures(passage);
    BitSet moments = new BitSet();
    for (int m = 0; m < passage.moments().size(); m++) {
      moments.set(m, measures.contains(passage.moments().get(m).place().measureIndex()));
    }
    return moments;
  }

  private static int index(Passage passage, String number, Predicate<Measure> wanted) {
    return passage.measures().stream()
        .filter(wanted)
        .findFirst()
        .map(Measure::index)
        .orElseThrow(() -> missing(passage, number));
  }

  private static FingeringException missing(Passage passage, String number) {
    if (passage.measures().stream().anyMatch(measure -> measure.number().equals(number))) {
      return new FingeringException(
          "Measure " + number + " comes before the other; give the lower number first.");
    }
    return new FingeringException(
        "Measure "
            + number
            + " does not come in "
            + passage.partName()
            + ", measures "
            + passage.measures().get(0).number()
            + " to "
            + passage.measures().get(passage.measures().size() - 1).number()
            + "; give measures as printed, the lower number first.");
  }

  /** As in a sentence: {@code in measure 9}, {@code in measures 9-16}; empty for the whole. */
  public String told() {
    return ends.map(
            e ->
                e.first().equals(e.last())
                    ? " in measure " + e.first()
                    : " in measures " + e.first() + "–" + e.last())
        .orElse("");
  }

  /** After a demand: {@code , m. 9-16}; empty for the whole passage. */
  String words() {
    return ends.map(
            e ->
                e.first().equals(e.last())
                    ? ", m. " + e.first()
                    : ", m. " + e.first() + "–" + e.last())
        .orElse("");
  }
}
