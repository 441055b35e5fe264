package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Passage;
import java.util.List;

/** The horizontal places of moments in measures of equal width side by side. */
final class PanelTime {
  /** A panel with fewer measures is not filled. */
  private static final int LEAST = 2;

  private final ImmutableList<Measure> measures;
  private final ImmutableList<Moment> moments;
  private final int first;
  private final double left;
  private final double right;

  /**
   * Lays out measures between two edges.
   *
   * @param measures successive measures, at least one
   * @param left the x at which the first measure begins
   * @param right the x at which the last one ends, if the panel is filled
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

  /** The number of moments in the measures. */
  int moments() {
    return moments.size();
  }

  /** The index in the passage of the first moment. */
  int first() {
    return first;
  }

  /** The x of a point in a measure, given as a share from 0 at its start to 1 at its end. */
  double x(Measure measure, double share) {
    int index = measure.index() - measures.get(0).index();
    return left + (right - left) * (index + share) / Math.max(LEAST, measures.size());
  }

  /** The x at which a moment begins; the first one has the index 0. */
  double start(int moment) {
    Moment at = moments.get(moment);
    Measure measure = measures.get(at.place().measureIndex() - measures.get(0).index());
    return x(measure, at.place().onset().doubleValue() / measure.length().doubleValue());
  }

  /** The x at which a moment ends: at the next one, or at the end of the measures. */
  double end(int moment) {
    return moment + 1 < moments.size() ? start(moment + 1) : end();
  }

  /** The x at which the measures end. */
  double end() {
    return x(measures.get(measures.size() - 1), 1);
  }
}
