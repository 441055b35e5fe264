package fingering.scoring;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;

/** Rules on moving the hand along the string. */
final class ShiftRules {
  /** Time to leave and to arrive, whatever the way, in microseconds (common practice). */
  private static final long LEAVE_AND_ARRIVE = 60_000;

  /** Time a millimetre of shift takes, in microseconds (common practice). */
  private static final long PER_MILLIMETRE = 1_500;

  /** A move shorter than this, as between half and 1st, draws the hand back or on (millimetres). */
  private static final long SLIGHT = 20;

  private ShiftRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedTransitionRule(
            "shift",
            "Shift",
            "The hand moves to another position; a rest, an open string or a slight move make it easier.",
            "tenth of a shift",
            ShiftRules::shift),
        new NamedTransitionRule(
            "shift-distance",
            "Distance of a shift",
            "The further the hand travels, the harder it is to arrive in tune.",
            "millimetre",
            ShiftRules::distance),
        new NamedTransitionRule(
            "shift-in-haste",
            "Shift in haste",
            "The shift needs more time than the end of the note before and the rest leave.",
            "hundredth of a second",
            ShiftRules::haste),
        new NamedTransitionRule(
            "shift-slurred",
            "Shift under a slur",
            "A shift within one bow is heard as a slide.",
            "shift",
            (passing, before, now) -> slurred(passing, before, now) ? 1 : 0),
        new NamedTransitionRule(
            "shift-changed-finger",
            "Shift to another finger",
            "Without a finger that slides along as a guide the arrival is less sure.",
            "shift",
            ShiftRules::changedFinger));
  }

  /** Whether the hand shifts; a note only respelled under the same finger is no shift. */
  static boolean shifts(Passing passing, Grip before, Grip now) {
    Frame from = before.frame();
    if (!from.shiftsTo(now.frame())) {
      return false;
    }
    return !(passing.respelled() && samePlace(before.top(), now.top()));
  }

  private static boolean samePlace(Placement a, Placement b) {
    return a.string() == b.string() && a.finger() == b.finger() && a.semitones() == b.semitones();
  }

  private static long shift(Passing passing, Grip before, Grip now) {
    if (!shifts(passing, before, now)) {
      return 0;
    }
    if (passing.acrossRest()) {
      return 3;
    }
    int whole = millimetres(before, now) < SLIGHT ? 4 : 10;
    return before.open() ? whole / 2 : whole;
  }

  /** Millimetres between the places of the first finger before and after. */
  static long millimetres(Grip before, Grip now) {
    return Math.round(Math.abs(now.firstFinger() - before.firstFinger()));
  }

  private static long distance(Passing passing, Grip before, Grip now) {
    if (!shifts(passing, before, now)) {
      return 0;
    }
    long way = millimetres(before, now);
    return passing.acrossRest() ? way / 2 : way;
  }

  private static long haste(Passing passing, Grip before, Grip now) {
    if (!shifts(passing, before, now)) {
      return 0;
    }
    long needed = LEAVE_AND_ARRIVE + PER_MILLIMETRE * millimetres(before, now);
    long free = before.open() ? passing.sinceMicros() : passing.freeMicros();
    return Math.max(0, needed - free) / 10_000;
  }

  private static boolean slurred(Passing passing, Grip before, Grip now) {
    return passing.slurred() && !before.open() && shifts(passing, before, now);
  }

  private static long changedFinger(Passing passing, Grip before, Grip now) {
    if (before.open() || passing.acrossRest() || !shifts(passing, before, now)) {
      return 0;
    }
    boolean guided =
        before.top().finger() == now.top().finger() && before.top().string() == now.top().string();
    return guided ? 0 : 1;
  }
}
