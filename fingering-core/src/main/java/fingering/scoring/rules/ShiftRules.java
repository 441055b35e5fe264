package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.HandMovement;
import fingering.scoring.ShiftCondition;
import fingering.scoring.Transition;

/** Rules on moving the hand along the string. */
final class ShiftRules {
  /** Time to leave and to arrive, whatever the way, in microseconds (common practice). */
  private static final long LEAVE_AND_ARRIVE = 60_000;

  /**
   * The string on which shifts of all instruments are measured, in millimetres. How long an aimed
   * movement takes, and how sure it is, depends on the way against the width of the target (P. M.
   * Fitts, 1954, from memory), and both grow with the string: a tone is a tone on the bass too.
   */
  private static final double REFERENCE = 328;

  /** Time a millimetre of shift on that string takes, in microseconds (common practice). */
  private static final long PER_MILLIMETRE = 1_500;

  private static final long HUNDREDTH = 10_000;

  /** A move shorter than this, as between half and 1st, draws the hand back or on (millimetres). */
  private static final long SLIGHT = 20;

  /** Further than this, in semitones, the hand goes to another position however short the way. */
  private static final double SLIGHT_SEMITONES = 1;

  /** The bass hand spans a tone. */
  private static final double NARROW = 2;

  /** The widest step of a scale, in semitones. */
  private static final int STEP = 2;

  private ShiftRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedTransitionRule(
                "shift",
                "Shift",
                "The hand moves to another position; a rest, an open string or a slight move make it easier, and so does the habit of cellists and bassists.",
                "tenth of a shift",
                ShiftRules::shift)
            .on(ShiftCondition.SHIFT),
        new NamedTransitionRule(
                "shift-distance",
                "Distance of a shift",
                "The further the hand travels, the harder it is to arrive in tune.",
                "millimetre on a string of 328 mm",
                ShiftRules::distance)
            .on(ShiftCondition.SHIFT),
        new NamedTransitionRule.Hurried(
            "shift-rushed",
            "Shift in haste",
            "The shift needs more time than the end of the note before and the rest leave.",
            "hundredth of a second",
            HUNDREDTH,
            ShiftRules::needed),
        new NamedTransitionRule(
                "shift-slurred",
                "Shift under a slur",
                "A shift within one bow is heard as a slide.",
                "shift",
                (transition, before, now) -> slurred(transition, before, now) ? 1 : 0)
            .on(ShiftCondition.SHIFT)
            .where(Transition::slurred),
        new NamedTransitionRule(
                "shift-changed-finger",
                "Shift to another finger",
                "Without a finger that slides along as a guide the arrival is less sure.",
                "shift",
                ShiftRules::changedFinger)
            .on(ShiftCondition.SHIFT),
        new NamedTransitionRule(
                "shift-creeping",
                "One finger takes the next step",
                "A finger that slides on by a whole tone smears a line; let another take the next note.",
                "shift",
                ShiftRules::creeping)
            .on(ShiftCondition.SHIFT));
  }

  private static long shift(Transition transition, Grip before, Grip now) {
    if (!HandMovement.shifts(transition, before, now)) {
      return 0;
    }
    if (transition.acrossRest()) {
      return 3;
    }
    int whole = slight(before, now) ? 4 : whole(now.frame());
    return before.open() ? whole / 2 : whole;
  }

  /** The less a hand spans the more often it shifts, and the less a shift is to it. */
  private static int whole(Frame frame) {
    if (frame.shape() == Frame.Shape.LETTERS) {
      return 10;
    }
    return frame.span() <= NARROW ? 5 : 8;
  }

  private static boolean slight(Grip before, Grip now) {
    return millimetres(before, now) < SLIGHT
        && Math.abs(now.frame().first() - before.frame().first()) <= SLIGHT_SEMITONES;
  }

  /** Millimetres between the places of the first finger before and after. */
  static long millimetres(Grip before, Grip now) {
    return Math.round(REFERENCE * Math.abs(now.frame().share() - before.frame().share()));
  }

  private static long distance(Transition transition, Grip before, Grip now) {
    if (!HandMovement.shifts(transition, before, now)) {
      return 0;
    }
    long way = millimetres(before, now);
    return transition.acrossRest() ? way / 2 : way;
  }

  private static long needed(Transition transition, Grip before, Grip now) {
    return HandMovement.shifts(transition, before, now)
        ? LEAVE_AND_ARRIVE + PER_MILLIMETRE * millimetres(before, now)
        : 0;
  }

  private static boolean slurred(Transition transition, Grip before, Grip now) {
    return transition.slurred() && !before.open() && HandMovement.shifts(transition, before, now);
  }

  private static long changedFinger(Transition transition, Grip before, Grip now) {
    if (before.open() || transition.acrossRest() || !HandMovement.shifts(transition, before, now)) {
      return 0;
    }
    Placement left = before.top();
    Placement reached = now.top();
    boolean guided = left.finger() == reached.finger() || firstLeads(left, reached);
    return left.string() == reached.string() && guided ? 0 : 1;
  }

  /** Where a line rises by a step the first finger, that lies behind the other, slides up. */
  private static boolean firstLeads(Placement left, Placement reached) {
    int rises = reached.semitones() - left.semitones();
    return left.finger().number() > 1
        && reached.finger() == Finger.FIRST
        && rises > 0
        && rises <= STEP;
  }

  private static int step(Placement left, Placement reached) {
    return Math.abs(left.semitones() - reached.semitones());
  }

  private static long creeping(Transition transition, Grip before, Grip now) {
    Placement left = before.top();
    Placement reached = now.top();
    return !left.open()
            && left.string() == reached.string()
            && left.finger() == reached.finger()
            && step(left, reached) == STEP
            && !transition.acrossRest()
            && HandMovement.shifts(transition, before, now)
        ? 1
        : 0;
  }
}
