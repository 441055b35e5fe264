package fingering.practice;

import fingering.fingerboard.Placement;
import fingering.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds figures that repeat at once with the same strings, fingers and rhythm: the hand plays them
 * by itself, and the player loses count.
 */
final class RepeatedFigures {
  private static final int SHORTEST = 3;
  private static final int LONGEST = 8;

  /** The fewest times in a row that make a repeated figure. */
  private static final int TIMES = 3;

  /**
   * A figure.
   *
   * @param from the index of its first moment
   * @param length the number of its moments
   * @param times how many times it is played in a row
   */
  record Figure(int from, int length, int times) {
    /** Returns the index of the last moment of the first occurrence. */
    int to() {
      return from + length - 1;
    }
  }

  private RepeatedFigures() {}

  /** Returns the figure most often repeated in a row, the first if tied; empty if none repeats. */
  static Optional<Figure> most(Plan plan) {
    List<String> keys =
        IntStream.range(0, plan.grips().size()).mapToObj(m -> key(plan, m)).toList();
    Optional<Figure> most = Optional.empty();
    for (int length = SHORTEST; length <= LONGEST; length++) {
      int[] times = times(keys, length);
      for (int from = 0; from + length * TIMES <= keys.size(); from++) {
        int least = most.map(Figure::times).orElse(TIMES - 1);
        if (times[from] > least && hasDifferentMoments(keys.subList(from, from + length))) {
          most = Optional.of(new Figure(from, length, times[from]));
        }
      }
    }
    return most;
  }

  /**
   * Returns how many times in a row the figure of a length is played from each moment on. The
   * figure repeats as long as each moment equals the moment one figure later.
   */
  private static int[] times(List<String> keys, int length) {
    int[] times = new int[keys.size()];
    int equal = 0;
    for (int from = keys.size() - length - 1; from >= 0; from--) {
      equal = keys.get(from).equals(keys.get(from + length)) ? equal + 1 : 0;
      times[from] = 1 + equal / length;
    }
    return times;
  }

  private static boolean hasDifferentMoments(List<String> figure) {
    return figure.stream().distinct().count() > 1;
  }

  /** Returns strings, fingers and duration in milliseconds as text, equal for equal moments. */
  private static String key(Plan plan, int moment) {
    StringBuilder key = new StringBuilder();
    for (Placement placement : plan.grips().get(moment).placements()) {
      key.append(placement.string()).append(placement.finger().symbol()).append(' ');
    }
    return key.append(plan.passage().moments().get(moment).soundMicros() / 1000).toString();
  }
}
