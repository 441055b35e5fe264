package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.GripAspect;
import fingering.scoring.HandMovement;
import fingering.scoring.HeldNotes;
import fingering.scoring.ShiftCondition;
import fingering.scoring.Transition;
import java.util.Optional;

/** Rules on the fingers within one hand position. */
final class FingerRules {
  /** The widest natural spacing in semitones, indexed by difference of finger numbers. */
  private static final int[] WIDEST = {0, 2, 4, 5};

  /** The narrowest natural spacing in semitones, indexed by difference of finger numbers. */
  private static final int[] NARROWEST = {0, 1, 2, 4};

  /** The charge for a held note that is released, in tenths of a note. */
  private static final int RELEASED = 10;

  private FingerRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedTransitionRule(
                "finger-slide",
                "Sliding finger",
                "One finger slides to another note while the hand stays in position; a little more easily to the same letter, as from F to F♯.",
                "half semitone",
                FingerRules::slide)
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "wide-fingers",
                "Fingers far apart",
                "Two fingers are further apart than their natural spacing.",
                "semitone",
                (transition, before, now) -> spacing(transition, before, now, true))
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "narrow-fingers",
                "Fingers close together",
                "Two fingers are squeezed together, or crossed.",
                "semitone",
                (transition, before, now) -> spacing(transition, before, now, false))
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "cello-extension-change",
                "Change of extension",
                "The cello hand changes between closed and extended.",
                "change",
                FingerRules::extensionChange)
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "cello-extension-upper",
                "Extension between upper fingers",
                "The cello hand extends or closes between two upper fingers; from the first finger this is easier.",
                "change",
                FingerRules::extensionBetweenUpperFingers)
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "held-note",
                "Held note released",
                "A note that should keep sounding loses its string, or another finger has to take it over.",
                "tenth of a note",
                FingerRules::released)
            .seeing(GripAspect.FINGERS)
            .where(transition -> !transition.held().isEmpty()),
        new NamedTransitionRule(
                "repeated-note",
                "Repeated note refingered",
                "A repeated note sounds and feels the same only with the same finger on the same string.",
                "note",
                FingerRules::refingered)
            .seeing(GripAspect.FINGERS)
            .where(Transition::repeated));
  }

  private static boolean sameHand(Transition transition, Grip before, Grip now) {
    return !before.divided()
        && !now.divided()
        && !transition.acrossRest()
        && !HandMovement.shifts(transition, before, now);
  }

  private static long slide(Transition transition, Grip before, Grip now) {
    if (!sameHand(transition, before, now) || shapeMoves(before, now)) {
      return 0;
    }
    long semitones = 0;
    for (int i = 0; i < before.placements().size(); i++) {
      Placement from = before.placements().get(i);
      for (int j = 0; j < now.placements().size(); j++) {
        Placement to = now.placements().get(j);
        if (!from.open() && from.finger() == to.finger() && from.string() == to.string()) {
          semitones += Math.abs(from.semitones() - to.semitones());
        }
      }
    }
    return transition.chromatic() ? semitones : 2 * semitones;
  }

  /** Whether the shape of a double stop moves a semitone, each finger keeping its letter. */
  private static boolean shapeMoves(Grip before, Grip now) {
    return ChordRules.moveAsOne(before, now)
        && now.placements().stream().noneMatch(Placement::respelled);
  }

  private static long spacing(Transition transition, Grip before, Grip now, boolean wide) {
    // Elsewhere each finger has only one place in the frame, so the spacing is fixed.
    if (!movable(now.frame()) || !sameHand(transition, before, now)) {
      return 0;
    }
    long semitones = 0;
    for (int i = 0; i < before.placements().size(); i++) {
      Placement from = before.placements().get(i);
      for (int j = 0; j < now.placements().size(); j++) {
        semitones += excess(from, now.placements().get(j), wide);
      }
    }
    return semitones;
  }

  private static boolean movable(Frame frame) {
    return frame.shape() == Frame.Shape.LETTERS || frame.shape() == Frame.Shape.THUMB;
  }

  /** Semitones beyond the widest, or below the narrowest, natural spacing. */
  private static long excess(Placement a, Placement b, boolean wide) {
    int apart = b.finger().number() - a.finger().number();
    if (a.open() || b.open() || apart == 0) {
      return 0;
    }
    int fingers = Math.abs(apart);
    int semitones = (b.semitones() - a.semitones()) * Integer.signum(apart);
    return wide
        ? Math.max(0, semitones - WIDEST[fingers])
        : Math.max(0, NARROWEST[fingers] - semitones);
  }

  private static long extensionChange(Transition transition, Grip before, Grip now) {
    return sameHand(transition, before, now) && before.frame().shape() != now.frame().shape()
        ? 1
        : 0;
  }

  /** In the forward extension the second to fourth fingers move, so this is easy from the first. */
  private static long extensionBetweenUpperFingers(Transition transition, Grip before, Grip now) {
    boolean changes = forward(before.frame()) != forward(now.frame());
    return changes && onUpper(before) && onUpper(now) && sameHand(transition, before, now) ? 1 : 0;
  }

  private static boolean forward(Frame frame) {
    return frame.shape() == Frame.Shape.EXTENDED_FORWARD;
  }

  private static boolean onUpper(Grip grip) {
    for (int i = 0; i < grip.placements().size(); i++) {
      if (grip.placements().get(i).finger().number() < 2) {
        return false;
      }
    }
    return true;
  }

  private static long released(Transition transition, Grip before, Grip now) {
    HeldNotes held = transition.held();
    long tenths = 0;
    for (int note = 0; note < held.count(); note++) {
      if (held.sounded(note)) {
        Optional<Placement> earlier = held.placementBefore(note, before);
        Optional<Placement> later = held.placementNow(note, now);
        // A note that was released earlier can no longer be held.
        tenths +=
            earlier.isPresent() && later.isPresent()
                ? changed(earlier.get(), later.get())
                : RELEASED;
      }
    }
    return tenths;
  }

  /** Replacing the finger on the same string keeps the note sounding, but is not easy. */
  private static int changed(Placement earlier, Placement later) {
    if (earlier.string() != later.string()) {
      return RELEASED;
    }
    return earlier.finger() == later.finger() ? 0 : 1;
  }

  private static boolean sameStringAndFinger(Placement a, Placement b) {
    return a.string() == b.string() && a.finger() == b.finger();
  }

  private static long refingered(Transition transition, Grip before, Grip now) {
    if (!transition.repeated() || transition.acrossRest()) {
      return 0;
    }
    Placement from = before.top();
    Placement to = now.top();
    return sameStringAndFinger(from, to) ? 0 : 1;
  }
}
