package fingering.engraving.spacing;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Divides the measures into systems of one width so that all are spaced as evenly as possible: the
 * optimal line breaks of D. E. Knuth and M. F. Plass (1981, from memory), with the squared
 * logarithm of a system's stretch as its badness.
 */
public final class SystemBreaks {
  /** A system squeezed by some factor is worse than one stretched by it. */
  private static final double SQUEEZED = 3;

  /** The cost of a system itself. */
  private static final double SYSTEM = 0.01;

  /** The cost of a last system that is nearly empty. */
  private static final double SHORT_LAST = 0.3;

  private final List<MeasureShape> measures;
  private final double width;

  private SystemBreaks(List<MeasureShape> measures, double width) {
    this.measures = measures;
    this.width = width;
  }

  /**
   * The systems of a part.
   *
   * @param measures its measures, at least one
   * @param width the width of a system, in staff spaces
   */
  public static ImmutableList<SystemShape> of(List<MeasureShape> measures, double width) {
    List<MeasureShape> parts = new ArrayList<>();
    for (int i = 0; i < measures.size(); i++) {
      Optional<MeasureShape> before = i == 0 ? Optional.empty() : Optional.of(measures.get(i - 1));
      Optional<MeasureShape> next =
          i + 1 == measures.size() ? Optional.empty() : Optional.of(measures.get(i + 1));
      double fixed =
          SystemShape.firstWidth(before, measures.get(i), next)
              + SystemShape.courtesyWidth(measures.get(i), next);
      parts.addAll(MeasureShapes.split(measures.get(i), width - fixed));
    }
    return new SystemBreaks(parts, width).systems();
  }

  private Optional<MeasureShape> at(int index) {
    return index < 0 || index >= measures.size()
        ? Optional.empty()
        : Optional.of(measures.get(index));
  }

  private ImmutableList<SystemShape> systems() {
    int[] starts = starts();
    List<SystemShape> systems = new ArrayList<>();
    for (int end = measures.size(); end > 0; end = starts[end]) {
      int from = starts[end];
      systems.add(
          SystemShape.of(
              at(from - 1), measures.subList(from, end), at(end), width, end == measures.size()));
    }
    return ImmutableList.copyOf(Lists.reverse(systems));
  }

  /** Indexed by the end of a system: where it starts in the best division up to there. */
  private int[] starts() {
    int n = measures.size();
    double[] best = new double[n + 1];
    int[] starts = new int[n + 1];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    best[0] = 0;
    double[] inner = new double[n];
    for (int i = 1; i < n; i++) {
      inner[i] = SystemShape.fixedWidth(measures.get(i - 1), measures.get(i), at(i + 1));
    }
    for (int from = 0; from < n; from++) {
      double fixed = SystemShape.firstWidth(at(from - 1), measures.get(from), at(from + 1));
      double least = 0;
      for (int to = from + 1; to <= n; to++) {
        MeasureShape added = measures.get(to - 1);
        fixed += to - 1 == from ? 0 : inner[to - 1];
        least += added.leastWidth();
        double room = width - fixed - SystemShape.courtesyWidth(added, at(to));
        if (least > room && to > from + 1) {
          break;
        }
        double cost = best[from] + badness(from, to, room);
        if (cost < best[to]) {
          best[to] = cost;
          starts[to] = from;
        }
      }
    }
    return starts;
  }

  private double badness(int from, int to, double room) {
    double natural = 0;
    for (MeasureShape measure : measures.subList(from, to)) {
      natural += measure.natural().stream().sum();
    }
    double log = Math.log(Math.max(1, room) / natural);
    boolean last = to == measures.size();
    if (last && log > 0) {
      return SYSTEM + (room > 3 * natural && from > 0 ? SHORT_LAST : 0);
    }
    return SYSTEM + log * log * (log < 0 ? SQUEEZED : 1);
  }
}
