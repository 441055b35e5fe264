package fingering.tempo;

import fingering.music.Moment;
import java.util.List;

/** The time that the music leaves, at the tempo in force. */
final class TempoClock {
  /** So many notes on either side are neighbours of a short one (common practice, no source). */
  private static final int AROUND = 2;

  private final List<Moment> moments;
  private final TimeTable times;

  TempoClock(List<Moment> moments, TimeTable times) {
    this.moments = moments;
    this.times = times;
  }

  /** Microseconds from one onset to another. */
  long between(int from, int to) {
    return moments.get(to).startMicros() - moments.get(from).startMicros();
  }

  /** Microseconds from an onset to the next; for the last to the end of its sound. */
  long until(int m) {
    return m + 1 < moments.size() ? between(m, m + 1) : moments.get(m).soundMicros();
  }

  /** The same, with what short notes take from a long neighbour. */
  long elastic(int from, int to) {
    return between(from, to) + lent(from, to);
  }

  /** Nobody plays a short note beside a long one to the letter. */
  private long lent(int from, int to) {
    long longest = 0;
    for (int m = Math.max(0, from - AROUND); m < from; m++) {
      longest = Math.max(longest, until(m));
    }
    for (int m = to; m < Math.min(moments.size() - 1, to + AROUND); m++) {
      longest = Math.max(longest, until(m));
    }
    double span = between(from, to);
    double spared = Math.max(0, longest - 2 * span / (to - from)) * times.share("lent");
    return Math.round(Math.min(spared, span * times.share("lent-at-most")));
  }

  /** What a shift has: the end of the note left, the rest, and the open strings between. */
  long free(int from, int to) {
    long sounds = Math.min(moments.get(from).soundMicros(), until(from));
    return between(from, to) - Math.round((1 - share(from + 1)) * sounds);
  }

  /** The share of the note before a moment that the hand may take for its way to it. */
  double share(int m) {
    return times.share(moments.get(m).slurred() ? "slurred" : "detached");
  }

  /** What grace notes have: half the note before them, and the note after them. */
  long graces(int first, int main) {
    long before = first == 0 ? 0 : until(first - 1) / 2;
    return before + between(first, main) + until(main);
  }
}
