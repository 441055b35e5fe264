package fingering.abc.reading;

import fingering.abc.syntax.AbcKey;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/** The accidentals that apply in the current measure. */
final class MeasureAccidentals {

  /** The range of an accidental (ABC 2.1, directive propagate-accidentals). */
  enum Propagation {
    /** Only its own note. */
    NOT,
    /** To the end of the measure, in its octave. */
    OCTAVE,
    /** To the end of the measure, in all octaves; the default. */
    PITCH
  }

  private AbcKey key;
  private final Map<Letter, Integer> byLetter = new HashMap<>();
  private final Map<Integer, Integer> byOctave = new HashMap<>();
  private final Map<Integer, Integer> printed = new HashMap<>();

  MeasureAccidentals(AbcKey key) {
    this.key = key;
  }

  /** Starts a measure. */
  void barLine() {
    byLetter.clear();
    byOctave.clear();
    printed.clear();
  }

  /** Changes the key signature. */
  void key(AbcKey changed) {
    key = changed;
    barLine();
  }

  /** Adds a note typed with an accidental. */
  void typed(Pitch pitch) {
    byLetter.put(pitch.letter(), pitch.alter());
    byOctave.put(pitch.letterNumber(), pitch.alter());
  }

  /** Returns the pitch of a note typed without an accidental. */
  Pitch plain(Pitch natural, Propagation propagation) {
    int signed = key.alter(natural.letter());
    int alter =
        switch (propagation) {
          case NOT -> signed;
          case OCTAVE -> inOctave(natural);
          case PITCH -> byLetter.getOrDefault(natural.letter(), signed);
        };
    return new Pitch(natural.letter(), alter, natural.octave());
  }

  private int inOctave(Pitch natural) {
    return byOctave.getOrDefault(natural.letterNumber(), key.alter(natural.letter()));
  }

  /** Returns whether the accidental of a note comes only from another octave. */
  boolean fromAnotherOctave(Pitch pitch) {
    return pitch.alter() != inOctave(pitch);
  }

  /**
   * Returns whether the score must print an accidental at a note. In print an accidental applies to
   * the end of the measure in its octave (common practice). Not to be called for a note continued
   * by a tie, which prints none.
   */
  boolean print(Pitch pitch, boolean typed) {
    int shown = printed.getOrDefault(pitch.letterNumber(), key.alter(pitch.letter()));
    if (!typed && shown == pitch.alter()) {
      return false;
    }
    printed.put(pitch.letterNumber(), pitch.alter());
    return true;
  }

  /**
   * Returns the alteration of the upper note of a trill if the score must print it; empty if the
   * key signature shows it.
   */
  OptionalInt above(Pitch note, Propagation propagation) {
    Pitch natural = Pitch.natural(note.letterNumber() + 1);
    boolean plain = key.fifths().isPresent() && !byLetter.containsKey(natural.letter());
    return plain ? OptionalInt.empty() : OptionalInt.of(plain(natural, propagation).alter());
  }
}
