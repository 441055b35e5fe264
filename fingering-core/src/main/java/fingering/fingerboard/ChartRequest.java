package fingering.fingerboard;

import fingering.tables.Key;
import fingering.tables.Position;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a chart is to show.
 *
 * @param position the position whose fingers are shown; the whole fingerboard where empty
 * @param place where the hand lies, in semitones from the open string to the first finger or the
 *     thumb, for positions that lie in several places; empty for the usual one
 * @param key the key whose notes are named; all notes where empty
 * @param string number of the only string shown; all strings where empty
 */
public record ChartRequest(
    Optional<Position> position, OptionalInt place, Optional<Key> key, OptionalInt string) {

  /** A chart of the whole fingerboard with all its notes. */
  public static ChartRequest whole() {
    return new ChartRequest(
        Optional.empty(), OptionalInt.empty(), Optional.empty(), OptionalInt.empty());
  }

  /** The same, of one position. */
  public ChartRequest in(Position one) {
    return new ChartRequest(Optional.of(one), place, key, string);
  }

  /** The same, with the hand in that place of its position. */
  public ChartRequest at(int semitones) {
    return new ChartRequest(position, OptionalInt.of(semitones), key, string);
  }

  /** The same, with the notes of a key. */
  public ChartRequest with(Key notes) {
    return new ChartRequest(position, place, Optional.of(notes), string);
  }

  /** The same, of one string. */
  public ChartRequest on(int number) {
    return new ChartRequest(position, place, key, OptionalInt.of(number));
  }
}
