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
      for (int from = 0; from + length * TIMES <= keys.size(); from++) {
        int times = times(keys, from, length);
        int least = most.map(Figure::times).orElse(TIMES - 1);
        if (times > least && hasDifferentMoments(keys.subList(from, from + length))) {
          most = Optional.of(new Figure(from, length, times));
        }
      }
    }
    return most;
  }

  private static int times(List<String> keys, int from, int length) {
    List<String> figure = keys.subList(from, from + length);
    int times = 1;
    for (int at = from + length;
        at + length <= keys.size() && keys.subList(at, at + length).equals(figure);
        at += length) {
      times++;
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
