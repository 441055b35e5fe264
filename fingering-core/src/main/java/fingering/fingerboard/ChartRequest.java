package fingering.fingerboard;

import fingering.tables.Key;
import fingering.tables.Position;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The content requested for a chart.
 *
 * @param position the position to show; empty for the whole fingerboard
 * @param place the place of the hand, in semitones from the open string to the first finger or the
 *     thumb, for positions with several places; empty for the default place
 * @param key the key whose notes are named; empty for all notes
 * @param string number of the only string to show; empty for all strings
 */
public record ChartRequest(
    Optional<Position> position, OptionalInt place, Optional<Key> key, OptionalInt string) {

  /** A chart of the whole fingerboard with all notes. */
  public static ChartRequest whole() {
    return new ChartRequest(
        Optional.empty(), OptionalInt.empty(), Optional.empty(), OptionalInt.empty());
  }

  /** The same for one position. */
  public ChartRequest in(Position one) {
    return new ChartRequest(Optional.of(one), place, key, string);
  }

  /** The same with the hand at that place of its position. */
  public ChartRequest at(int semitones) {
    return new ChartRequest(position, OptionalInt.of(semitones), key, string);
  }

  /** The same with the notes of a key. */
  public ChartRequest with(Key notes) {
    return new ChartRequest(position, place, Optional.of(notes), string);
  }

  /** The same for one string. */
  public ChartRequest on(int number) {
    return new ChartRequest(position, place, key, OptionalInt.of(number));
  }
}
