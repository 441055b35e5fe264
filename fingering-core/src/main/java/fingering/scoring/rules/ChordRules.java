package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.GripAspect;
import fingering.scoring.NoteContext;
import fingering.scoring.Transition;

/** Rules on double stops and chords: the shape of the hand that holds several notes. */
final class ChordRules {
  /** The fourth finger, as seen from the first: no two fingers are further apart. */
  private static final int WIDEST = 3;

  private static final int TONE = 2;

  /** Semitones from one string to the next; on the bass they are a fourth apart. */
  private static final int FIFTH = 7;

  private ChordRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedNoteRule(
            "chord-shape",
            "Fingers held together",
            "Each finger that holds a note of a double stop or chord makes it harder.",
            "finger",
            ChordRules::held),
        new NamedNoteRule(
            "chord-fingers",
            "Fingers out of shape",
            "Each interval has its own fingers: thirds 1-3 or 2-4, sixths neighbours, octaves 1-4.",
            "finger",
            ChordRules::outOfShape),
        new NamedTransitionRule(
                "chord-shape-change",
                "Change of shape",
                "Successive double stops of one interval keep one shape; the arm moves, not the fingers.",
                "change",
                ChordRules::shapeChange)
            .seeing(GripAspect.FINGERS)
            .where(transition -> !transition.acrossRest() && transition.held().isEmpty()),
        new NamedTransitionRule(
                "broken-chord",
                "Leap on one string",
                "A leap from or to an open string stops it ringing; the next string has the note nearby.",
                "leap",
                ChordRules::leap)
            .seeing(GripAspect.FINGERS)
            .where(
                transition ->
                    !transition.acrossRest() && Math.abs(transition.rises()) == Transition.LEAP),
        new NamedNoteRule(
            "divided",
            "Divided chord",
            "One hand cannot hold these notes together; break or divide the chord.",
            "note",
            (context, grip) -> grip.divided() ? grip.placements().size() : 0));
  }

  private static long held(NoteContext context, Grip grip) {
    if (grip.placements().size() < 2) {
      return 0;
    }
    long fingers = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      fingers += grip.placements().get(i).open() ? 0 : 1;
    }
    return fingers;
  }

  /**
   * The fingers too many or too few between the notes on neighbouring strings. A hand holds a
   * double stop with one finger for each step between the two places: the same place is a bar, up
   * to a whole tone neighbouring fingers, up to two whole tones a finger between, more 1-4. On
   * strings a fifth apart, this makes fourths and sixths neighbours, thirds and sevenths 1-3 or
   * 2-4, octaves, seconds, unisons and tenths 1-4. In thumb position the thumb is the finger before
   * the first, so an octave is thumb and third (common practice, no source).
   */
  private static long outOfShape(NoteContext context, Grip grip) {
    // In the neck positions of cello and bass, the place leaves no choice of finger.
    if (grip.placements().size() < 2 || grip.divided() || !movable(grip.frame())) {
      return 0;
    }
    long fingers = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      for (int j = 0; j < i; j++) {
        Placement lower = grip.placements().get(j);
        Placement higher = grip.placements().get(i);
        if (pair(lower, higher)) {
          fingers += Math.abs(apart(lower, higher) - inShape(lower, higher));
        } else if (crossed(lower, higher)) {
          fingers += 2;
        }
      }
    }
    return fingers;
  }

  /** Whether both notes are stopped, on neighbouring strings. */
  private static boolean pair(Placement a, Placement b) {
    return a.stopped() && b.stopped() && Math.abs(a.string() - b.string()) == 1;
  }

  /**
   * Whether the higher note is more than a tone above the open string on which the lower one
   * sounds, and yet on a lower string: the voices cross, and the hand goes high for nothing.
   */
  private static boolean crossed(Placement lower, Placement higher) {
    return lower.open()
        && higher.string() > lower.string()
        && higher.semitones() > FIFTH * (higher.string() - lower.string()) + TONE;
  }

  private static int apart(Placement a, Placement b) {
    return Math.abs(a.finger().number() - b.finger().number());
  }

  /**
   * The charge for another shape, where the interval is the same or so close to it that its shape
   * is the same. Thirds can change between 1-3 and 2-4: two fingers apart is one shape. While a
   * note is held, the fingers move one by one, and no shape is expected.
   */
  private static long shapeChange(Transition transition, Grip before, Grip now) {
    if (transition.acrossRest()
        || !transition.held().isEmpty()
        || !doubleStop(before)
        || !doubleStop(now)
        || !movable(before.frame())
        || !movable(now.frame())) {
      return 0;
    }
    Placement a = before.placements().get(0);
    Placement b = before.top();
    Placement c = now.placements().get(0);
    Placement d = now.top();
    return inShape(a, b) == inShape(c, d) && apart(a, b) != apart(c, d) ? 1 : 0;
  }

  private static boolean doubleStop(Grip grip) {
    return !grip.divided()
        && grip.placements().size() == 2
        && pair(grip.placements().get(0), grip.top());
  }

  /** How many fingers apart the hand's own shape holds two notes. */
  private static int inShape(Placement a, Placement b) {
    int semitones = Math.abs(a.semitones() - b.semitones());
    return Math.min(WIDEST, (semitones + 1) / TONE);
  }

  /**
   * In a broken chord over open strings, each note has its own string, so that the strings ring on
   * (common practice, no source). The note is more than a fifth above the open string, so the next
   * string has it too, lower on the neck.
   */
  private static long leap(Transition transition, Grip before, Grip now) {
    if (transition.acrossRest() || before.placements().size() > 1 || now.placements().size() > 1) {
      return 0;
    }
    Placement from = before.top();
    Placement to = now.top();
    boolean openAndStopped = from.open() ? to.stopped() : to.open() && from.stopped();
    return openAndStopped
            && from.string() == to.string()
            && to.string() > 1
            && Math.abs(from.semitones() - to.semitones()) > FIFTH
        ? 1
        : 0;
  }

  private static boolean movable(Frame frame) {
    return frame.shape() == Frame.Shape.LETTERS || frame.shape() == Frame.Shape.THUMB;
  }

  /**
   * Whether the whole hand moves along with the shape it holds, as in octaves with 1-4: at least
   * two fingers, each on its string as before, and all go the same way. Players hear and feel this
   * as one movement of the arm, not as fingers that slide or creep (common practice, no source).
   */
  static boolean moveAsOne(Grip before, Grip now) {
    int notes = now.placements().size();
    if (notes < 2 || before.placements().size() != notes || before.divided() || now.divided()) {
      return false;
    }
    int way = Integer.signum(now.top().semitones() - before.top().semitones());
    for (int i = 0; i < notes; i++) {
      Placement from = before.placements().get(i);
      Placement to = now.placements().get(i);
      if (way == 0
          || Integer.signum(to.semitones() - from.semitones()) != way
          || !from.stopped()
          || !to.stopped()
          || from.finger() != to.finger()
          || from.string() != to.string()) {
        return false;
      }
    }
    return true;
  }
}
