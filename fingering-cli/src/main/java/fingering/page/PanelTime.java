package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Passage;
import java.util.List;

/** Some measures side by side, of one width each: where their moments lie. */
final class PanelTime {
  /** The width is shared by so many measures at least. */
  private static final int LEAST = 4;

  private final ImmutableList<Measure> measures;
  private final ImmutableList<Moment> moments;
  private final int first;
  private final double left;
  private final double right;

  /**
   * Lays some measures of a passage between two edges.
   *
   * @param measures neighbours, at least one
   * @param left the x of the first measure's start
   * @param right the x at which the last one ends, where there are not too few
   */
  PanelTime(Passage passage, List<Measure> measures, double left, double right) {
    this.measures = ImmutableList.copyOf(measures);
    this.left = left;
    this.right = right;
    int before = 0;
    ImmutableList.Builder<Moment> here = ImmutableList.builder();
    for (Moment moment : passage.moments()) {
      int index = moment.place().measureIndex() - measures.get(0).index();
      before += index < 0 ? 1 : 0;
      if (index >= 0 && index < measures.size()) {
        here.add(moment);
      }
    }
    first = before;
    moments = here.build();
  }

  ImmutableList<Measure> measures() {
    return measures;
  }

  /** How many moments begin in them. */
  int moments() {
    return moments.size();
  }

  /** Index in the passage of the first of these. */
  int first() {
    return first;
  }

  /** The x of a share of a measure, from 0 at its start to 1 at its end. */
  double x(Measure measure, double share) {
    int index = measure.index() - measures.get(0).index();
    return left + (right - left) * (index + share) / Math.max(LEAST, measures.size());
  }

  /** Where a moment begins; the first of them is 0. */
  double start(int moment) {
    Moment at = moments.get(moment);
    Measure measure = measures.get(at.place().measureIndex() - measures.get(0).index());
    return x(measure, at.place().onset().doubleValue() / measure.length().doubleValue());
  }

  /** Where it gives way to the next, or the measures end. */
  double end(int moment) {
    return moment + 1 < moments.size() ? start(moment + 1) : end();
  }

  /** Where the measures end. */
  double end() {
    return x(measures.get(measures.size() - 1), 1);
  }
}
