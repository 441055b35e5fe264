package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Chart.KeyRelation;
import fingering.tables.Key;
import fingering.tables.Letter;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Optional;

/**
 * Names of the notes of a chart: in the spelling of the key, or from the neighbouring natural
 * notes.
 */
final class ChartNotes {
  /** All notes, without a key. */
  static final ChartNotes ALL = new ChartNotes(Optional.empty());

  private final Optional<Key> key;

  ChartNotes(Optional<Key> key) {
    this.key = key;
  }

  /** The names of a note, and its relation to the key. */
  record Naming(ImmutableList<Pitch> names, KeyRelation relation) {
    private static Naming of(Pitch name, KeyRelation relation) {
      return new Naming(ImmutableList.of(name), relation);
    }
  }

  Naming name(OpenString string, int semitones) {
    int midi = string.pitch().midi() + semitones;
    if (key.isPresent()) {
      return inKey(key.get(), midi);
    }
    return semitones == 0 ? Naming.of(string.pitch(), KeyRelation.NAMED) : natural(midi);
  }

  private static Naming inKey(Key key, int midi) {
    return key.spelled(midi)
        .map(pitch -> Naming.of(pitch, KeyRelation.NAMED))
        .or(() -> key.spelledRaised(midi).map(pitch -> Naming.of(pitch, KeyRelation.RAISED)))
        .orElse(new Naming(ImmutableList.of(), KeyRelation.OUTSIDE));
  }

  private static Naming natural(int midi) {
    return altered(midi, 0)
        .map(pitch -> Naming.of(pitch, KeyRelation.NAMED))
        .orElseGet(
            () ->
                new Naming(
                    ImmutableList.of(
                        altered(midi, 1).orElseThrow(), altered(midi, -1).orElseThrow()),
                    KeyRelation.BETWEEN));
  }

  /** The note with that MIDI number and that alteration; empty if there is none. */
  private static Optional<Pitch> altered(int midi, int alter) {
    int natural = midi - alter;
    for (Letter letter : Letter.values()) {
      if (letter.semitones() == Math.floorMod(natural, Pitch.OCTAVE)) {
        return Optional.of(new Pitch(letter, alter, Math.floorDiv(natural, Pitch.OCTAVE) - 1));
      }
    }
    return Optional.empty();
  }
}
