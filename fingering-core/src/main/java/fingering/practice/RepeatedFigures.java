package fingering.practice;

import fingering.fingerboard.Placement;
import fingering.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds figures whose fingers and strings come again at once, note for note: the hand does them by
 * itself, and loses count.
 */
final class RepeatedFigures {
  private static final int SHORTEST = 3;
  private static final int LONGEST = 8;

  /** So many times in a row make a repeated figure. */
  private static final int TIMES = 3;

  /**
   * A figure.
   *
   * @param from its first moment
   * @param length moments in it
   * @param times how often it comes in a row
   */
  record Figure(int from, int length, int times) {
    /** The last moment of it. */
    int to() {
      return from + length - 1;
    }
  }

  private RepeatedFigures() {}

  /** The figure that comes most often in a row, the first of several; empty where none does. */
  static Optional<Figure> most(Plan plan) {
    List<String> signs =
        IntStream.range(0, plan.grips().size()).mapToObj(m -> sign(plan, m)).toList();
    Optional<Figure> most = Optional.empty();
    for (int length = SHORTEST; length <= LONGEST; length++) {
      for (int from = 0; from + length * TIMES <= signs.size(); from++) {
        int times = times(signs, from, length);
        int least = most.map(Figure::times).orElse(TIMES - 1);
        if (times > least && changes(signs.subList(from, from + length))) {
          most = Optional.of(new Figure(from, length, times));
        }
      }
    }
    return most;
  }

  private static int times(List<String> signs, int from, int length) {
    List<String> figure = signs.subList(from, from + length);
    int times = 1;
    for (int at = from + length;
        at + length <= signs.size() && signs.subList(at, at + length).equals(figure);
        at += length) {
      times++;
    }
    return times;
  }

  private static boolean changes(List<String> figure) {
    return figure.stream().distinct().count() > 1;
  }

  /** String, finger, and how long until the next note, in thousandths of a second. */
  private static String sign(Plan plan, int moment) {
    StringBuilder sign = new StringBuilder();
    for (Placement placement : plan.grips().get(moment).placements()) {
      sign.append(placement.string()).append(placement.finger().symbol()).append(' ');
    }
    return sign.append(plan.passage().moments().get(moment).soundMicros() / 1000).toString();
  }
}
