package fingering.practice;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Placement;
import fingering.music.KeySignature;
import fingering.tables.OpenString;
import fingering.tables.Pitch;

/**
 * The note under the old finger once the hand has arrived in its new place. On violin and viola,
 * each finger has a letter, so it is the note of the key with that letter: in C minor, the first
 * finger that shifts to 1st position on the D string slides to E flat, not to E. On cello and
 * double bass, the fingers keep their distance in semitones, and the key only decides the spelling
 * (common practice, no source).
 *
 * @param left the placement before the shift
 * @param reached the placement on which the hand arrives
 * @param string the string of the old finger
 * @param fifths the key signature there: the number of sharps, or of flats as a negative number
 */
record GuideNote(Placement left, Placement reached, OpenString string, int fifths) {
  /** Neighbouring fingers are a half step or a whole step apart. */
  private static final int WHOLE_STEP = 2;

  /** Returns the sounding pitch, at or below that of the open string if there is none. */
  Pitch pitch() {
    Frame frame = reached.frame();
    boolean numbered = left.finger() != Finger.THUMB && left.finger() != Finger.OPEN;
    int letters = frame.index() + left.finger().number() - 1;
    return frame.shape() == Frame.Shape.LETTERS && numbered && letters > 0
        ? lettered(string.pitch().letterNumber() + letters)
        : spelled(string.pitch().midi() + semitones());
  }

  private int semitones() {
    return left.semitones() + (int) Math.round(reached.frame().first() - left.frame().first());
  }

  /**
   * Returns the note of the key with a letter. If that is too near to the arriving finger, or too
   * far from it, it is raised or lowered to the nearest that the hand can hold.
   */
  private Pitch lettered(int letterNumber) {
    Pitch natural = Pitch.natural(letterNumber);
    int midi = natural.midi() + KeySignature.alter(natural.letter(), fifths);
    boolean plain = reached.stopped() && reached.stretch() <= 0 && !reached.respelled();
    if (plain && reached.string() == left.string()) {
      int fingers = left.finger().number() - reached.finger().number();
      int arrived = string.pitch().midi() + reached.semitones();
      int near = arrived + fingers;
      int far = arrived + WHOLE_STEP * fingers;
      midi = Math.max(Math.min(near, far), Math.min(Math.max(near, far), midi));
    }
    return Math.abs(midi - natural.midi()) <= WHOLE_STEP
        ? Pitch.spelled(letterNumber, midi)
        : spelled(midi);
  }

  /**
   * Returns a pitch as the key spells it. Outside the key it is a natural, or a flat in a key of
   * flats, or a sharp in one of sharps.
   */
  private Pitch spelled(int midi) {
    Pitch usual = string.above(midi - string.pitch().midi());
    Pitch best = usual;
    for (int letter = usual.letterNumber() - 1; letter <= usual.letterNumber() + 1; letter++) {
      int alter = midi - Pitch.natural(letter).midi();
      if (Math.abs(alter) <= 1) {
        Pitch other = Pitch.spelled(letter, midi);
        best = strangeness(other) < strangeness(best) ? other : best;
      }
    }
    return best;
  }

  /** Returns how unusual a spelling is in the key: 0 for a note of the key. */
  private int strangeness(Pitch pitch) {
    if (pitch.alter() == KeySignature.alter(pitch.letter(), fifths)) {
      return 0;
    }
    return pitch.alter() == 0 ? 1 : pitch.alter() * fifths > 0 ? 2 : 3;
  }
}
