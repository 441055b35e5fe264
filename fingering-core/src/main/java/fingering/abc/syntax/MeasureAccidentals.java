package fingering.abc.syntax;

import com.google.common.collect.ImmutableMap;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/** Keeps in mind which accidentals hold in a measure. */
public final class MeasureAccidentals {
  private static final ImmutableMap<String, Integer> SIGNS =
      ImmutableMap.of("^^", 2, "^", 1, "=", 0, "_", -1, "__", -2);

  /** How far an accidental reaches (ABC 2.1, directive propagate-accidentals). */
  public enum Reach {
    /** Its own note. */
    NOT,
    /** To the end of the bar, in its octave. */
    OCTAVE,
    /** To the end of the bar, in all octaves: so where nothing is said. */
    PITCH
  }

  private AbcKey key;
  private final Map<Letter, Integer> byLetter = new HashMap<>();
  private final Map<Integer, Integer> byPlace = new HashMap<>();
  private final Map<Integer, Integer> printed = new HashMap<>();

  public MeasureAccidentals(AbcKey key) {
    this.key = key;
  }

  /** Semitones by which signs such as {@code ^} or {@code __} alter a note. */
  public static int alteration(String signs) {
    return SIGNS.getOrDefault(signs, 0);
  }

  /** Begins a measure. */
  public void barLine() {
    byLetter.clear();
    byPlace.clear();
    printed.clear();
  }

  /** Takes a new signature. */
  public void key(AbcKey changed) {
    key = changed;
    barLine();
  }

  /** Takes an accidental typed at a note. */
  public void typed(Pitch pitch) {
    byLetter.put(pitch.letter(), pitch.alter());
    byPlace.put(pitch.letterNumber(), pitch.alter());
  }

  /** The pitch of a note typed without an accidental. */
  public Pitch plain(Pitch natural, Reach reach) {
    int signed = key.alter(natural.letter());
    int alter =
        switch (reach) {
          case NOT -> signed;
          case OCTAVE -> inOctave(natural);
          case PITCH -> byLetter.getOrDefault(natural.letter(), signed);
        };
    return new Pitch(natural.letter(), alter, natural.octave());
  }

  private int inOctave(Pitch natural) {
    return byPlace.getOrDefault(natural.letterNumber(), key.alter(natural.letter()));
  }

  /** Whether only an accidental of another octave makes the note what it is. */
  public boolean fromAnotherOctave(Pitch pitch) {
    return pitch.alter() != inOctave(pitch);
  }

  /**
   * Whether the score has to print an accidental at a note, for in print one holds to the end of
   * the measure in its octave (common practice); that of a note that is only held on is not
   * printed.
   */
  public boolean print(Pitch pitch, boolean typed) {
    int shown = printed.getOrDefault(pitch.letterNumber(), key.alter(pitch.letter()));
    if (!typed && shown == pitch.alter()) {
      return false;
    }
    printed.put(pitch.letterNumber(), pitch.alter());
    return true;
  }

  /**
   * How the note above one is altered, where the score has to print it at a trill: where it shows
   * neither in a signature of a major key nor may stay as that has it.
   */
  public OptionalInt above(Pitch note, Reach reach) {
    Pitch natural = Pitch.natural(note.letterNumber() + 1);
    boolean plain = key.fifths().isPresent() && !byLetter.containsKey(natural.letter());
    return plain ? OptionalInt.empty() : OptionalInt.of(plain(natural, reach).alter());
  }
}
