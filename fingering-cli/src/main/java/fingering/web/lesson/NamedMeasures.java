package fingering.web.lesson;

import com.google.common.collect.Range;
import fingering.demand.MeasureSpan;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import java.util.Optional;

/** Measures as lessons name them. */
final class NamedMeasures {
  private NamedMeasures() {}

  /** The indices of the measures of a demand such as {@code 3@4-7}; empty if it names none. */
  static Optional<Range<Integer>> of(String demand, Passage passage) {
    int at = demand.lastIndexOf('@');
    return at < 0 ? Optional.empty() : in(passage, demand.substring(at + 1));
  }

  /** The indices of measures in a passage; empty if it does not have them. */
  static Optional<Range<Integer>> in(Passage passage, String measures) {
    try {
      return Optional.of(MeasureSpan.parse(measures).measureIndices(passage));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }
}
