package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.HandMovement;
import fingering.scoring.HeldNotes;
import fingering.scoring.ShiftCondition;
import fingering.scoring.Transition;
import java.util.Optional;

/** Rules on the fingers within one hand position. */
final class FingerRules {
  /** Widest easy distance in semitones between fingers that lie 1, 2 and 3 apart. */
  private static final int[] WIDEST = {0, 2, 4, 5};

  /** Narrowest easy distance in semitones between fingers that lie 1, 2 and 3 apart. */
  private static final int[] NARROWEST = {0, 1, 2, 4};

  /** Tenths of a held note that is lost. */
  private static final int LET_GO = 10;

  private FingerRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedTransitionRule(
                "finger-slide",
                "Finger slides",
                "One finger slides to another note without a shift of the hand.",
                "semitone",
                FingerRules::slide)
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "wide-fingers",
                "Wide between fingers",
                "Two fingers lie further apart than the hand falls.",
                "semitone",
                (transition, before, now) -> spacing(transition, before, now, true))
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "narrow-fingers",
                "Narrow between fingers",
                "Two fingers are squeezed together, or cross.",
                "semitone",
                (transition, before, now) -> spacing(transition, before, now, false))
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "cello-extension-change",
                "Hand opens or closes",
                "The hand changes between its closed and its extended shape.",
                "change",
                FingerRules::opens)
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "cello-extension-upper",
                "Hand opens above the first finger",
                "The cello hand opens on the first finger; between the others all of them would move.",
                "change",
                FingerRules::opensAbove)
            .on(ShiftCondition.STAY)
            .where(transition -> !transition.acrossRest()),
        new NamedTransitionRule(
                "held-note",
                "Held note let go",
                "A note that should sound on loses its string, or another finger has to take it over.",
                "tenth of a note",
                FingerRules::letGo)
            .where(transition -> !transition.held().isEmpty()),
        new NamedTransitionRule(
                "repeated-note",
                "Repeated note fingered anew",
                "A note struck again sounds and feels the same only under the same finger.",
                "note",
                FingerRules::anew)
            .where(Transition::repeated));
  }

  private static boolean sameHand(Transition transition, Grip before, Grip now) {
    return !before.divided()
        && !now.divided()
        && !transition.acrossRest()
        && !HandMovement.shifts(transition, before, now);
  }

  private static long slide(Transition transition, Grip before, Grip now) {
    if (!sameHand(transition, before, now)) {
      return 0;
    }
    long semitones = 0;
    for (int i = 0; i < before.placements().size(); i++) {
      Placement left = before.placements().get(i);
      for (int j = 0; j < now.placements().size(); j++) {
        Placement reached = now.placements().get(j);
        if (!left.open()
            && left.finger() == reached.finger()
            && left.string() == reached.string()) {
          semitones += Math.abs(left.semitones() - reached.semitones());
        }
      }
    }
    return semitones;
  }

  private static long spacing(Transition transition, Grip before, Grip now, boolean wide) {
    // Where each finger has one place, the frame itself says how far apart they lie.
    if (!movable(now.frame()) || !sameHand(transition, before, now)) {
      return 0;
    }
    long semitones = 0;
    for (int i = 0; i < before.placements().size(); i++) {
      Placement left = before.placements().get(i);
      for (int j = 0; j < now.placements().size(); j++) {
        semitones += off(left, now.placements().get(j), wide);
      }
    }
    return semitones;
  }

  private static boolean movable(Frame frame) {
    return frame.shape() == Frame.Shape.LETTERS || frame.shape() == Frame.Shape.THUMB;
  }

  private static long off(Placement a, Placement b, boolean wide) {
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

  private static long opens(Transition transition, Grip before, Grip now) {
    return sameHand(transition, before, now) && before.frame().shape() != now.frame().shape()
        ? 1
        : 0;
  }

  /** Opening forward, second to fourth finger move and the first stays: it has to play one end. */
  private static long opensAbove(Transition transition, Grip before, Grip now) {
    boolean moved = forward(before.frame()) != forward(now.frame());
    return moved && onUpper(before) && onUpper(now) && sameHand(transition, before, now) ? 1 : 0;
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

  private static long letGo(Transition transition, Grip before, Grip now) {
    HeldNotes held = transition.held();
    long tenths = 0;
    for (int note = 0; note < held.count(); note++) {
      if (held.sounded(note)) {
        Optional<Placement> was = held.placementBefore(note, before);
        Optional<Placement> is = held.placementNow(note, now);
        // Who has let go of a note cannot hold it later.
        tenths += was.isPresent() && is.isPresent() ? changed(was.get(), is.get()) : LET_GO;
      }
    }
    return tenths;
  }

  /** A finger that takes over on the same string keeps the note sounding; that is an art, too. */
  private static int changed(Placement was, Placement is) {
    if (was.string() != is.string()) {
      return LET_GO;
    }
    return was.finger() == is.finger() ? 0 : 1;
  }

  private static boolean sameStop(Placement a, Placement b) {
    return a.string() == b.string() && a.finger() == b.finger();
  }

  private static long anew(Transition transition, Grip before, Grip now) {
    if (!transition.repeated() || transition.acrossRest()) {
      return 0;
    }
    Placement left = before.top();
    Placement reached = now.top();
    return sameStop(left, reached) ? 0 : 1;
  }
}
