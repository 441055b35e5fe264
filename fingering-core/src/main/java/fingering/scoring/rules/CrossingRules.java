package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.HandMovement;
import fingering.scoring.Transition;

/** Rules on the bow's way across the strings. Plucked notes are free of them. */
final class CrossingRules {
  private CrossingRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedTransitionRule(
                "crossing",
                "String crossing",
                "The bow moves to the neighbouring string; from or to an open one it is easier.",
                "half crossing",
                CrossingRules::crossing)
            .where(HandMovement::bowed),
        new NamedTransitionRule(
                "crossing-slurred",
                "Crossing under a slur",
                "The colour changes within one bow.",
                "half crossing",
                (transition, before, now) ->
                    transition.slurred() ? crossing(transition, before, now) : 0)
            .where(transition -> transition.slurred() && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "crossing-quick",
                "Quick crossing",
                "Arm and fingers must meet on the new string within a short note; an open string waits.",
                "crossing",
                CrossingRules::quick)
            .where(transition -> transition.quick() && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "skipped-string",
                "Skipped string",
                "The bow passes over a string without touching it.",
                "string",
                (transition, before, now) ->
                    Math.max(0L, HandMovement.stringsCrossed(transition, before, now) - 1)
                        * (transition.slurred() ? 2 : 1))
            .where(HandMovement::bowed),
        new NamedTransitionRule(
                "crossing-against-line",
                "Crossing against the line",
                "The line rises and the bow goes down to a lower string for it, or the other way round.",
                "crossing",
                CrossingRules::against)
            .where(transition -> transition.rises() != 0 && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "same-finger-hop",
                "Finger hops to next string",
                "One finger must hop to another string at once, or lie across two: the stopped fifth.",
                "half hop",
                CrossingRules::hop)
            .where(transition -> !transition.acrossRest()));
  }

  /** Two halves; one where an open string leaves the fingers free while the arm moves. */
  private static long crossing(Transition transition, Grip before, Grip now) {
    if (HandMovement.stringsCrossed(transition, before, now) == 0) {
      return 0;
    }
    return before.open() || now.open() ? 1 : 2;
  }

  private static long quick(Transition transition, Grip before, Grip now) {
    return transition.quick()
            && !before.open()
            && !now.open()
            && HandMovement.stringsCrossed(transition, before, now) > 0
        ? 1
        : 0;
  }

  private static long against(Transition transition, Grip before, Grip now) {
    boolean single = before.placements().size() == 1 && now.placements().size() == 1;
    if (!single || HandMovement.stringsCrossed(transition, before, now) == 0) {
      return 0;
    }
    int toLower = now.top().string() - before.top().string();
    return Integer.signum(transition.rises()) * toLower > 0 ? 1 : 0;
  }

  private static long hop(Transition transition, Grip before, Grip now) {
    if (transition.acrossRest()) {
      return 0;
    }
    long halves = 0;
    for (int i = 0; i < before.placements().size(); i++) {
      Placement left = before.placements().get(i);
      for (int j = 0; j < now.placements().size(); j++) {
        Placement reached = now.placements().get(j);
        if (!left.open()
            && left.finger() == reached.finger()
            && left.string() != reached.string()) {
          halves += left.semitones() == reached.semitones() ? 1 : 2;
        }
      }
    }
    return halves;
  }
}
