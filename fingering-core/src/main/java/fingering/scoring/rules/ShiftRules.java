package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.GripAspect;
import fingering.scoring.HandMovement;
import fingering.scoring.Pace;
import fingering.scoring.ShiftCondition;
import fingering.scoring.Transition;

/** Rules on shifts. */
final class ShiftRules {
  /** Time to leave and to arrive at any distance, in microseconds (common practice). */
  private static final long LEAVE_AND_ARRIVE_MICROS = 60_000;

  /**
   * The string length to which all shifts are scaled, in millimetres. The duration and accuracy of
   * an aimed movement depend on its distance relative to the width of the target (P. M. Fitts,
   * 1954, from memory), and both grow with the string.
   */
  private static final double REFERENCE_LENGTH = 328;

  /** Time per millimetre on that string, in microseconds (common practice). */
  private static final long MICROS_PER_MILLIMETRE = 1_500;

  private static final long HUNDREDTH_MICROS = 10_000;

  /**
   * A shift below this distance in millimetres is slight: from half to 1st position, for example.
   */
  private static final long SLIGHT = 20;

  /** A shift of more semitones is never slight. */
  private static final double SLIGHT_SEMITONES = 1;

  /** The widest step of a scale, in semitones. */
  private static final int STEP = 2;

  private ShiftRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedTransitionRule(
                "shift",
                "Shift",
                "The hand moves to another position; this is easier in a rest, from an open string, for a short distance, and on cello and bass.",
                "tenth of a shift",
                ShiftRules::shift)
            .seeing(GripAspect.HAND)
            .on(ShiftCondition.SHIFT),
        new NamedTransitionRule(
                "shift-distance",
                "Shift distance",
                "The further the hand travels, the harder it is to arrive in tune.",
                "millimetre on a 328 mm string",
                ShiftRules::distance)
            .seeing(GripAspect.HAND)
            .on(ShiftCondition.SHIFT),
        new NamedTransitionRule.Timed(
            "shift-rushed",
            "Rushed shift",
            "The shift takes longer than the rest and the end of the note before allow.",
            "hundredth of a second",
            HUNDREDTH_MICROS,
            ShiftRules::needed),
        new NamedTransitionRule(
                "shift-quick",
                "Shift in quick music",
                "The quicker the notes, the less time the hand has to settle after a shift.",
                "tenth of a shift",
                (transition, before, now) ->
                    transition.pace().level() * shift(transition, before, now))
            .seeing(GripAspect.HAND)
            .on(ShiftCondition.SHIFT)
            .where(transition -> transition.pace() != Pace.SLOW),
        new NamedTransitionRule(
                "shift-slurred",
                "Shift under a slur",
                "A shift within one bow is heard as a slide.",
                "shift",
                (transition, before, now) -> slurred(transition, before, now) ? 1 : 0)
            .seeing(GripAspect.HAND)
            .on(ShiftCondition.SHIFT)
            .where(Transition::slurred),
        new NamedTransitionRule(
                "shift-changed-finger",
                "Unguided shift",
                "No finger slides along to guide the hand, so it arrives less securely.",
                "shift",
                ShiftRules::changedFinger)
            .seeing(GripAspect.FINGERS)
            .on(ShiftCondition.SHIFT),
        new NamedTransitionRule(
                "shift-creeping",
                "Creeping shift",
                "One finger shifts on to the next note and smears the line; another finger would speak clearly.",
                "half shift",
                ShiftRules::creeping)
            .seeing(GripAspect.FINGERS)
            .on(ShiftCondition.SHIFT));
  }

  private static long shift(Transition transition, Grip before, Grip now) {
    if (!HandMovement.shifts(transition, before, now)) {
      return 0;
    }
    if (transition.acrossRest()) {
      return 3;
    }
    int tenths = slight(before, now) ? 4 : fullShift(now.frame());
    return before.open() ? tenths / 2 : tenths;
  }

  /** Tenths for a full shift. The less the hand spans, the more often it shifts. */
  private static int fullShift(Frame frame) {
    return switch (frame.hand()) {
      case VIOLIN -> 10;
      case CELLO -> 8;
      case BASS -> 5;
    };
  }

  private static boolean slight(Grip before, Grip now) {
    return millimetres(before, now) < SLIGHT
        && Math.abs(now.frame().first() - before.frame().first()) <= SLIGHT_SEMITONES;
  }

  /** Millimetres that the first finger moves, on a string of the reference length. */
  static long millimetres(Grip before, Grip now) {
    return Math.round(REFERENCE_LENGTH * Math.abs(now.frame().share() - before.frame().share()));
  }

  private static long distance(Transition transition, Grip before, Grip now) {
    if (!HandMovement.shifts(transition, before, now)) {
      return 0;
    }
    long distance = millimetres(before, now);
    return transition.acrossRest() ? distance / 2 : distance;
  }

  private static long needed(Transition transition, Grip before, Grip now) {
    return HandMovement.shifts(transition, before, now)
        ? LEAVE_AND_ARRIVE_MICROS + MICROS_PER_MILLIMETRE * millimetres(before, now)
        : 0;
  }

  private static boolean slurred(Transition transition, Grip before, Grip now) {
    return transition.slurred() && !before.open() && HandMovement.shifts(transition, before, now);
  }

  private static long changedFinger(Transition transition, Grip before, Grip now) {
    if (before.open()
        || transition.acrossRest()
        || !HandMovement.shifts(transition, before, now)
        || ChordRules.moveAsOne(before, now)) {
      return 0;
    }
    Placement from = before.top();
    Placement to = now.top();
    boolean guided = from.finger() == to.finger() || firstLeads(from, to);
    return from.string() == to.string() && guided ? 0 : 1;
  }

  /** Whether the first finger, behind the other, guides the shift up a step to itself. */
  private static boolean firstLeads(Placement from, Placement to) {
    int rises = to.semitones() - from.semitones();
    return from.finger().number() > 1 && to.finger() == Finger.FIRST && rises > 0 && rises <= STEP;
  }

  private static int step(Placement from, Placement to) {
    return Math.abs(from.semitones() - to.semitones());
  }

  private static long creeping(Transition transition, Grip before, Grip now) {
    Placement from = before.top();
    Placement to = now.top();
    boolean creeps =
        !from.open()
            && from.string() == to.string()
            && from.finger() == to.finger()
            && !transition.acrossRest()
            && HandMovement.shifts(transition, before, now)
            && !ChordRules.moveAsOne(before, now);
    if (!creeps) {
      return 0;
    }
    return switch (step(from, to)) {
      case STEP -> 2;
      case 1 -> creepingSemitone(transition, now.frame());
      default -> 0;
    };
  }

  /**
   * On the cello the next finger lies a semitone on, so to creep there is never needed. The bass
   * hand has fewer fingers than semitones, and often moves by one. On violin and viola a slide to
   * the same letter, from F to F♯, is common practice, to another letter it is not.
   */
  private static long creepingSemitone(Transition transition, Frame frame) {
    return switch (frame.hand()) {
      case VIOLIN -> transition.chromatic() ? 1 : 2;
      case CELLO -> 4;
      case BASS -> 0;
    };
  }
}
