package fingering.tempo;

import fingering.music.Moment;
import java.util.List;

/** The time available between notes, at the marked tempo, in microseconds. */
final class TempoClock {
  /** Notes on either side from which a short note may borrow time (common practice, no source). */
  private static final int NEIGHBOURS = 2;

  private final List<Moment> moments;
  private final TimeTable times;

  TempoClock(List<Moment> moments, TimeTable times) {
    this.moments = moments;
    this.times = times;
  }

  /** The time from one onset to another. */
  long between(int from, int to) {
    return moments.get(to).startMicros() - moments.get(from).startMicros();
  }

  /** The time from an onset to the next; from the last onset to the end of its sound. */
  long toNext(int m) {
    return m + 1 < moments.size() ? between(m, m + 1) : moments.get(m).soundMicros();
  }

  /** The time from one onset to another, with the time borrowed from a longer neighbour. */
  long flexible(int from, int to) {
    return between(from, to) + borrowed(from, to);
  }

  /** The time that short notes may borrow, because players lengthen them beside a long note. */
  private long borrowed(int from, int to) {
    long longest = 0;
    for (int m = Math.max(0, from - NEIGHBOURS); m < from; m++) {
      longest = Math.max(longest, toNext(m));
    }
    for (int m = to; m < Math.min(moments.size() - 1, to + NEIGHBOURS); m++) {
      longest = Math.max(longest, toNext(m));
    }
    double own = between(from, to);
    double available = Math.max(0, longest - 2 * own / (to - from)) * times.share("lent");
    return Math.round(Math.min(available, own * times.share("lent-at-most")));
  }

  /** The time for a shift: the end of the note before it, a rest and open strings between. */
  long forShift(int from, int to) {
    long sounding = Math.min(moments.get(from).soundMicros(), toNext(from));
    return between(from, to) - Math.round((1 - shiftShare(from + 1)) * sounding);
  }

  /** The share of the note before a moment that a shift to the moment may use. */
  double shiftShare(int m) {
    return times.share(moments.get(m).slurred() ? "slurred" : "detached");
  }

  /** The time for grace notes: half of the note before them, and the note after them. */
  long forGraceNotes(int first, int main) {
    long before = first == 0 ? 0 : toNext(first - 1) / 2;
    return before + between(first, main) + toNext(main);
  }
}
