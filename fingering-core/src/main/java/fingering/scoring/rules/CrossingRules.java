package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.GripAspect;
import fingering.scoring.HandMovement;
import fingering.scoring.Transition;
import fingering.tables.Instrument.HandKind;

/** Rules on string crossings of the bow. They do not charge plucked notes. */
final class CrossingRules {
  /** The widest step of a scale, in semitones. */
  private static final int STEP = 2;

  private CrossingRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedTransitionRule(
                "crossing",
                "String crossing",
                "The bow moves to another string; this is easier from or to an open string.",
                "half crossing",
                CrossingRules::crossing)
            .seeing(GripAspect.STRINGS)
            .where(HandMovement::bowed),
        new NamedTransitionRule(
                "crossing-slurred",
                "Crossing under a slur",
                "The tone colour changes within one bow.",
                "half crossing",
                (transition, before, now) ->
                    transition.slurred() ? crossing(transition, before, now) : 0)
            .seeing(GripAspect.STRINGS)
            .where(transition -> transition.slurred() && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "crossing-quick",
                "Quick crossing",
                "Bow and finger must reach the new string together within a short note.",
                "crossing",
                CrossingRules::quickCrossing)
            .seeing(GripAspect.STRINGS)
            .where(transition -> transition.quick() && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "skipped-string",
                "Skipped string",
                "The bow passes over a string without touching it.",
                "string",
                (transition, before, now) ->
                    Math.max(0L, HandMovement.stringsCrossed(transition, before, now) - 1)
                        * (transition.slurred() ? 2 : 1))
            .seeing(GripAspect.STRINGS)
            .where(HandMovement::bowed),
        new NamedTransitionRule(
                "crossing-against-line",
                "Crossing against the line",
                "The line rises but the bow goes to a lower string, or the other way round.",
                "crossing",
                CrossingRules::crossingAgainstLine)
            .seeing(GripAspect.STRINGS)
            .where(transition -> transition.rises() != 0 && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "open-string-descending",
                "Open string on the way down",
                "On the way down to a lower string the fourth finger prepares the hand; the open string is for the way up.",
                "open string",
                (transition, before, now) -> descendsFromOpen(transition, before, now) ? 1 : 0)
            .seeing(GripAspect.STRINGS)
            .where(transition -> isStepDown(transition) && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "same-finger-hop",
                "Finger hops across strings",
                "One finger must hop to another string at once, or stop two strings, as for a fifth.",
                "half hop",
                CrossingRules::hop)
            .seeing(GripAspect.FINGERS)
            .where(transition -> !transition.acrossRest()));
  }

  /** Two halves; one if an open string leaves the fingers free while the arm moves. */
  private static long crossing(Transition transition, Grip before, Grip now) {
    if (HandMovement.stringsCrossed(transition, before, now) == 0) {
      return 0;
    }
    return before.open() || now.open() ? 1 : 2;
  }

  private static long quickCrossing(Transition transition, Grip before, Grip now) {
    return transition.quick()
            && !before.open()
            && !now.open()
            && HandMovement.stringsCrossed(transition, before, now) > 0
        ? 1
        : 0;
  }

  private static long crossingAgainstLine(Transition transition, Grip before, Grip now) {
    boolean single = before.placements().size() == 1 && now.placements().size() == 1;
    if (!single || HandMovement.stringsCrossed(transition, before, now) == 0) {
      return 0;
    }
    int toLower = now.top().string() - before.top().string();
    return Integer.signum(transition.rises()) * toLower > 0 ? 1 : 0;
  }

  /**
   * Teachers of violin and viola say: the open string going up, the fourth finger coming down. On
   * cello and bass the open string is the usual note both ways (common practice, no source).
   */
  private static boolean descendsFromOpen(Transition transition, Grip before, Grip now) {
    return isStepDown(transition)
        && !transition.acrossRest()
        && before.placements().size() == 1
        && before.open()
        && now.frame().hand() == HandKind.VIOLIN
        && !now.open()
        && now.top().string() == before.top().string() + 1;
  }

  private static boolean isStepDown(Transition transition) {
    return transition.rises() < 0 && transition.rises() >= -STEP;
  }

  private static long hop(Transition transition, Grip before, Grip now) {
    if (transition.acrossRest()) {
      return 0;
    }
    long halves = 0;
    for (int i = 0; i < before.placements().size(); i++) {
      Placement from = before.placements().get(i);
      for (int j = 0; j < now.placements().size(); j++) {
        Placement to = now.placements().get(j);
        if (!from.open() && from.finger() == to.finger() && from.string() != to.string()) {
          halves += from.semitones() == to.semitones() ? 1 : 2;
        }
      }
    }
    return halves;
  }
}
