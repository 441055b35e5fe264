package fingering.scoring;

import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;

/** Shifts of the left hand and string crossings of the bow between two successive grips. */
public final class HandMovement {
  private HandMovement() {}

  /**
   * Whether the hand shifts. A repeated note that is only spelled differently, with the same
   * finger, is not a shift.
   */
  public static boolean shifts(Transition transition, Grip before, Grip now) {
    Frame from = before.frame();
    if (!from.shiftsTo(now.frame())) {
      return false;
    }
    return !(transition.respelled() && samePlace(before.top(), now.top()));
  }

  private static boolean samePlace(Placement a, Placement b) {
    return a.string() == b.string() && a.finger() == b.finger() && a.semitones() == b.semitones();
  }

  /** Whether the bow has to travel from one grip to the other. */
  public static boolean bowed(Transition transition) {
    return !transition.plucked() && !transition.acrossRest();
  }

  /**
   * The number of strings that the bow crosses: 0 if the grips share a string, 1 to a neighbouring
   * string, 2 if it skips one.
   */
  public static int stringsCrossed(Transition transition, Grip before, Grip now) {
    if (!bowed(transition)) {
      return 0;
    }
    int nearest = Integer.MAX_VALUE;
    for (int i = 0; i < before.placements().size(); i++) {
      for (int j = 0; j < now.placements().size(); j++) {
        int strings = before.placements().get(i).string() - now.placements().get(j).string();
        nearest = Math.min(nearest, Math.abs(strings));
      }
    }
    return nearest;
  }
}
