package fingering.tables;

import com.google.common.collect.ImmutableSortedMap;
import java.util.Optional;

/**
 * Names of positions for instruments whose positions are told by the semitones from the open string
 * to the first finger of the closed hand: cello and double bass.
 */
public final class PositionNames {
  private final ImmutableSortedMap<Integer, Position> bySemitone;

  private PositionNames(ImmutableSortedMap<Integer, Position> bySemitone) {
    this.bySemitone = bySemitone;
  }

  /** The names that the tables give for an instrument; empty where positions go by letters. */
  public static PositionNames of(Instrument instrument) {
    ImmutableSortedMap.Builder<Integer, Position> names = ImmutableSortedMap.naturalOrder();
    for (Table.Row row : Table.read("positions.table", 4).rows()) {
      if (row.text(0).equals(instrument.kind().name().toLowerCase(java.util.Locale.ROOT))) {
        try {
          names.put(row.integer(1), Position.parse(row.text(2)));
        } catch (IllegalArgumentException e) {
          throw row.bad(e.getMessage());
        }
      }
    }
    return new PositionNames(names.build());
  }

  /** Semitones of the first finger above the open string, each with the name of its position. */
  public ImmutableSortedMap<Integer, Position> bySemitone() {
    return bySemitone;
  }

  /** The position whose first finger lies that many semitones above the open string. */
  public Optional<Position> at(int semitones) {
    return Optional.ofNullable(bySemitone.get(semitones));
  }
}
