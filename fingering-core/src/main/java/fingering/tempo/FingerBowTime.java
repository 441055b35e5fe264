package fingering.tempo;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import java.util.ArrayList;
import java.util.List;

/** The minimum time that fingers and bow need from one onset to the next, without shifts. */
final class FingerBowTime {
  private final TimeTable times;
  private final double referenceScale;

  /**
   * The times for a player and an instrument.
   *
   * @param stringLength length of the strings in millimetres
   */
  FingerBowTime(TimeTable times, double stringLength) {
    this.times = times;
    referenceScale = ShiftTime.REFERENCE / stringLength;
  }

  /**
   * The minimum time from one grip to the next. It includes the time to play a broken chord before
   * leaving it.
   *
   * @param joined whether finger and bow need not be coordinated, as under a slur
   */
  MinimumTime between(boolean joined, Grip before, Moment now, Grip after) {
    List<Placement> changed = changed(before, after);
    if (now.pizzicato() || leftPlucked(now)) {
      MinimumTime pluck =
          new MinimumTime(
              LimitCause.PIZZICATO,
              times.action(leftPlucked(now) ? "left-pizzicato" : "pizzicato"));
      return pluck.longer(
          changed.isEmpty() ? pluck : addFingers(before, changed, fingerTime()).total());
    }
    int strings = stringsApart(before, after);
    MinimumTime.Sum sum =
        changed.isEmpty() && strings == 0
            ? new MinimumTime.Sum(LimitCause.BOW, times.action("bow"))
            : addFingers(before, changed, fingerTime());
    if (strings > 0) {
      sum.add(LimitCause.CROSSING, times.action("crossing"));
      if (strings > 1) {
        sum.add(LimitCause.SKIP, times.action("skip", strings - 1));
      }
    } else if (!changed.isEmpty() && !joined) {
      sum.add(LimitCause.TOGETHER, times.action("together"));
    }
    int brokenStrings = before.placements().size() - 2;
    if (brokenStrings > 0) {
      sum.add(LimitCause.CHORD, times.action("another-string", brokenStrings));
    }
    return sum.total();
  }

  /** The minimum time of a trill on a placement. */
  MinimumTime trill(Placement placement) {
    boolean weak = placement.trill().map(upper -> weak(placement.finger(), upper)).orElse(true);
    long beat = times.action("finger") + (weak ? times.action("weak-fingers") : 0);
    return new MinimumTime(LimitCause.TRILL, times.amount("trill") * beat);
  }

  private MinimumTime.Sum fingerTime() {
    return new MinimumTime.Sum(LimitCause.FINGERS, times.action("finger"));
  }

  /** Adds the time that the left hand needs to place fingers to a sum, and returns the sum. */
  private MinimumTime.Sum addFingers(Grip before, List<Placement> changed, MinimumTime.Sum sum) {
    boolean weak = false;
    long hop = 0;
    double stretch = 0;
    int furtherFingers = -1;
    for (Placement after : changed) {
      if (after.open()) {
        continue;
      }
      boolean twoFingers =
          after.touch().map(touch -> touch.finger() != after.finger()).orElse(false);
      furtherFingers += twoFingers ? 2 : 1;
      stretch += after.stretch() * referenceScale;
      for (Placement earlier : before.placements()) {
        boolean sameString = earlier.string() == after.string();
        weak |= sameString && weak(earlier.finger(), after.finger());
        if (!sameString && !earlier.open() && earlier.finger() == after.finger()) {
          String name = earlier.semitones() == after.semitones() ? "across" : "hop";
          hop = Math.max(hop, times.action(name));
        }
      }
    }
    return sum.add(LimitCause.WEAK_FINGERS, weak ? times.action("weak-fingers") : 0)
        .add(LimitCause.HOP, hop)
        .add(LimitCause.STRETCH, times.action("stretch", stretch))
        .add(LimitCause.CHORD, times.action("another-finger", Math.max(0, furtherFingers)));
  }

  /** Whether two fingers are the third and the fourth. */
  private static boolean weak(Finger one, Finger other) {
    return one.number() + other.number() == 7 && Math.abs(one.number() - other.number()) == 1;
  }

  /** The placements of a grip that the one before does not have. */
  private static List<Placement> changed(Grip before, Grip after) {
    List<Placement> changed = new ArrayList<>();
    for (Placement placement : after.placements()) {
      if (!has(before, placement)) {
        changed.add(placement);
      }
    }
    return changed;
  }

  private static boolean has(Grip grip, Placement placement) {
    for (Placement held : grip.placements()) {
      if (samePlace(held, placement)) {
        return true;
      }
    }
    return false;
  }

  private static boolean samePlace(Placement a, Placement b) {
    return a.string() == b.string() && a.finger() == b.finger() && a.semitones() == b.semitones();
  }

  /** The distance between the nearest strings of two grips; 0 if they share a string. */
  static int stringsApart(Grip before, Grip after) {
    int nearest = Integer.MAX_VALUE;
    for (Placement earlier : before.placements()) {
      for (Placement later : after.placements()) {
        nearest = Math.min(nearest, Math.abs(earlier.string() - later.string()));
      }
    }
    return nearest;
  }

  private static boolean leftPlucked(Moment moment) {
    for (Note note : moment.starting()) {
      if (note.marks().leftPlucked()) {
        return true;
      }
    }
    return false;
  }
}
