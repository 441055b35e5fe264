package fingering.musicxml.writing;

import fingering.music.KeySignature;
import fingering.tables.Pitch;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.audiveris.proxymusic.AccidentalValue;

/**
 * The accidentals to print in one measure. An accidental applies to the end of the measure, in its
 * octave only (common practice).
 */
final class PlainAccidentals {
  private final int fifths;
  private final Map<Integer, Integer> shown = new HashMap<>();

  /**
   * Starts a measure.
   *
   * @param fifths sharps of the key signature, negative for flats
   */
  PlainAccidentals(int fifths) {
    this.fifths = fifths;
  }

  /** Returns the accidental of the next note; empty if it needs none. */
  Optional<AccidentalValue> next(Pitch pitch) {
    int letter = pitch.letterNumber();
    int before = shown.getOrDefault(letter, KeySignature.alter(pitch.letter(), fifths));
    shown.put(letter, pitch.alter());
    return before == pitch.alter() ? Optional.empty() : Optional.of(sign(pitch.alter()));
  }

  private static AccidentalValue sign(int alter) {
    return switch (alter) {
      case -3 -> AccidentalValue.TRIPLE_FLAT;
      case -2 -> AccidentalValue.FLAT_FLAT;
      case -1 -> AccidentalValue.FLAT;
      case 0 -> AccidentalValue.NATURAL;
      case 1 -> AccidentalValue.SHARP;
      case 2 -> AccidentalValue.DOUBLE_SHARP;
      default -> AccidentalValue.TRIPLE_SHARP;
    };
  }
}
