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
 * A range of measures of a passage, both ends included, or the whole passage.
 *
 * @param ends the numbers of the first and the last measure; empty for the whole passage
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

  /** The span from one measure to another, by their numbers as printed. */
  public static MeasureSpan of(String first, String last) {
    return new MeasureSpan(Optional.of(new Ends(first, last)));
  }

  /**
   * Reads measure numbers as printed: {@code 9-16}, {@code 9}.
   *
   * @throws FingeringException if the text is neither a number nor a range
   */
  public static MeasureSpan parse(String text) {
    Matcher matcher = WRITTEN.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' is not a range of measures; write the numbers as printed, 9-16 or 9");
    }
    String first = matcher.group(1);
    return of(first, Optional.ofNullable(matcher.group(2)).orElse(first));
  }

  /**
   * The indices of these measures in the part, from 0. If a number occurs more than once, it means
   * the first measure with that number; the last measure is the first one not before it.
   *
   * @throws FingeringException if the passage does not have these measures, or the last comes
   *     before the first
   */
  public Range<Integer> measureIndices(Passage passage) {
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
   * @throws FingeringException if the passage does not have these measures, or the last comes
   *     before the first
   */
  public BitSet moments(Passage passage) {
    Range<Integer> measures = measureIndices(passage);
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
          "The range of measures ends at measure "
              + number
              + ", before it begins; give the lower number first.");
    }
    return new FingeringException(
        "There is no measure "
            + number
            + " in "
            + passage.partName()
            + ", which has measures "
            + passage.measures().get(0).number()
            + " to "
            + passage.measures().get(passage.measures().size() - 1).number()
            + "; give measure numbers as printed.");
  }

  /**
   * A phrase to append to a sentence: {@code " in measure 9"}, {@code " in measures 9–16"}; empty
   * for the whole passage.
   */
  public String phrase() {
    return ends.map(
            e ->
                e.first().equals(e.last())
                    ? " in measure " + e.first()
                    : " in measures " + e.first() + "–" + e.last())
        .orElse("");
  }

  /** A suffix to append to a demand: {@code ", m. 9–16"}; empty for the whole passage. */
  String suffix() {
    return ends.map(
            e ->
                e.first().equals(e.last())
                    ? ", m. " + e.first()
                    : ", m. " + e.first() + "–" + e.last())
        .orElse("");
  }
}
