package fingering.tempo;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import java.util.ArrayList;
import java.util.List;

/** The least time from one onset to the next that fingers and bow take, but for shifts. */
final class FingerBowTime {
  private final TimeTable times;
  private final double toReference;

  /**
   * The actions of a player.
   *
   * @param stringLength millimetres
   */
  FingerBowTime(TimeTable times, double stringLength) {
    this.times = times;
    toReference = ShiftTime.REFERENCE / stringLength;
  }

  /**
   * What it takes to come from one grip to the next; a chord that the bow has to break is played
   * before it is left.
   *
   * @param joined whether the bow goes on, or finger and bow need not be brought together
   */
  MinimumTime need(boolean joined, Grip before, Moment now, Grip reached) {
    List<Placement> fresh = fresh(before, reached);
    if (now.pizzicato() || plucked(now)) {
      MinimumTime right =
          new MinimumTime(
              LimitCause.PIZZICATO, times.action(plucked(now) ? "left-pizzicato" : "pizzicato"));
      return right.or(fresh.isEmpty() ? right : left(before, fresh, fingers()).need());
    }
    int strings = apart(before, reached);
    MinimumTime.Sum sum =
        fresh.isEmpty() && strings == 0
            ? new MinimumTime.Sum(LimitCause.BOW, times.action("bow"))
            : left(before, fresh, fingers());
    if (strings > 0) {
      sum.add(LimitCause.CROSSING, times.action("crossing"));
      if (strings > 1) {
        sum.add(LimitCause.SKIP, times.action("skip", strings - 1));
      }
    } else if (!fresh.isEmpty() && !joined) {
      sum.add(LimitCause.TOGETHER, times.action("together"));
    }
    int broken = before.placements().size() - 2;
    if (broken > 0) {
      sum.add(LimitCause.CHORD, times.action("another-string", broken));
    }
    return sum.need();
  }

  /** The shortest trill with the fingers of a grip. */
  MinimumTime trill(Placement placement) {
    boolean weak = placement.trill().map(upper -> weak(placement.finger(), upper)).orElse(true);
    long beat = times.action("finger") + (weak ? times.action("weak-fingers") : 0);
    return new MinimumTime(LimitCause.TRILL, times.amount("trill") * beat);
  }

  private MinimumTime.Sum fingers() {
    return new MinimumTime.Sum(LimitCause.FINGERS, times.action("finger"));
  }

  private MinimumTime.Sum left(Grip before, List<Placement> fresh, MinimumTime.Sum sum) {
    boolean weak = false;
    long hop = 0;
    double stretch = 0;
    int set = -1;
    for (Placement reached : fresh) {
      if (reached.open()) {
        continue;
      }
      set += reached.touch().map(touch -> touch.finger() != reached.finger()).orElse(false) ? 2 : 1;
      stretch += reached.stretch() * toReference;
      for (Placement left : before.placements()) {
        boolean sameString = left.string() == reached.string();
        weak |= sameString && weak(left.finger(), reached.finger());
        if (!sameString && !left.open() && left.finger() == reached.finger()) {
          String how = left.semitones() == reached.semitones() ? "across" : "hop";
          hop = Math.max(hop, times.action(how));
        }
      }
    }
    return sum.add(LimitCause.WEAK_FINGERS, weak ? times.action("weak-fingers") : 0)
        .add(LimitCause.HOP, hop)
        .add(LimitCause.STRETCH, times.action("stretch", stretch))
        .add(LimitCause.CHORD, times.action("another-finger", Math.max(0, set)));
  }

  private static boolean weak(Finger one, Finger other) {
    return one.number() + other.number() == 7 && Math.abs(one.number() - other.number()) == 1;
  }

  /** The placements that were not there before. */
  private static List<Placement> fresh(Grip before, Grip reached) {
    List<Placement> fresh = new ArrayList<>();
    for (Placement placement : reached.placements()) {
      if (!holds(before, placement)) {
        fresh.add(placement);
      }
    }
    return fresh;
  }

  private static boolean holds(Grip grip, Placement placement) {
    for (Placement held : grip.placements()) {
      if (alike(held, placement)) {
        return true;
      }
    }
    return false;
  }

  private static boolean alike(Placement a, Placement b) {
    return a.string() == b.string() && a.finger() == b.finger() && a.semitones() == b.semitones();
  }

  /** Strings between the nearest strings of the two grips; 0 where they share one. */
  static int apart(Grip before, Grip reached) {
    int nearest = Integer.MAX_VALUE;
    for (Placement left : before.placements()) {
      for (Placement placement : reached.placements()) {
        nearest = Math.min(nearest, Math.abs(left.string() - placement.string()));
      }
    }
    return nearest;
  }

  private static boolean plucked(Moment moment) {
    for (Note note : moment.starting()) {
      if (note.marks().leftPlucked()) {
        return true;
      }
    }
    return false;
  }
}
