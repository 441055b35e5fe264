package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Chart.Standing;
import fingering.tables.Key;
import fingering.tables.Letter;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Optional;

/** How the notes of a chart are named: as the key spells them, or by their natural neighbours. */
final class ChartNotes {
  /** Every note, in no key. */
  static final ChartNotes ALL = new ChartNotes(Optional.empty());

  private final Optional<Key> key;

  ChartNotes(Optional<Key> key) {
    this.key = key;
  }

  /** The names of a note, and how it stands to the key. */
  record Naming(ImmutableList<Pitch> names, Standing standing) {
    private static Naming of(Pitch name, Standing standing) {
      return new Naming(ImmutableList.of(name), standing);
    }
  }

  Naming name(OpenString string, int semitones) {
    int midi = string.pitch().midi() + semitones;
    if (key.isPresent()) {
      return inKey(key.get(), midi);
    }
    return semitones == 0 ? Naming.of(string.pitch(), Standing.NAMED) : natural(midi);
  }

  private static Naming inKey(Key key, int midi) {
    return key.spelled(midi)
        .map(pitch -> Naming.of(pitch, Standing.NAMED))
        .or(() -> key.spelledRaised(midi).map(pitch -> Naming.of(pitch, Standing.RAISED)))
        .orElse(new Naming(ImmutableList.of(), Standing.OUTSIDE));
  }

  private static Naming natural(int midi) {
    return altered(midi, 0)
        .map(pitch -> Naming.of(pitch, Standing.NAMED))
        .orElseGet(
            () ->
                new Naming(
                    ImmutableList.of(
                        altered(midi, 1).orElseThrow(), altered(midi, -1).orElseThrow()),
                    Standing.BETWEEN));
  }

  /** The note of that MIDI number whose letter is altered so; empty where no letter fits. */
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
