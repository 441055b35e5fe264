package fingering.tables;

import com.google.common.collect.ImmutableSortedMap;
import java.util.Optional;

/**
 * Names of positions for instruments whose positions are told by the semitones from the open string
 * to the first finger of the closed hand: cello and double bass.
 */
public final class PositionNames {
  private static final String NOTHING = "-";

  private final ImmutableSortedMap<Integer, Position> bySemitone;
  private final ImmutableSortedMap<Integer, String> remarks;

  private PositionNames(
      ImmutableSortedMap<Integer, Position> bySemitone,
      ImmutableSortedMap<Integer, String> remarks) {
    this.bySemitone = bySemitone;
    this.remarks = remarks;
  }

  /** The names that the tables give for an instrument; empty where positions go by letters. */
  public static PositionNames of(Instrument instrument) {
    ImmutableSortedMap.Builder<Integer, Position> names = ImmutableSortedMap.naturalOrder();
    ImmutableSortedMap.Builder<Integer, String> remarks = ImmutableSortedMap.naturalOrder();
    for (Table.Row row : Table.read("positions.table", 5).rows()) {
      if (row.text(0).equals(instrument.kind().name().toLowerCase(java.util.Locale.ROOT))) {
        try {
          names.put(row.integer(1), Position.parse(row.text(2)));
        } catch (FingeringException e) {
          throw row.bad(e);
        }
        remarks.put(row.integer(1), row.text(3).equals(NOTHING) ? "" : row.text(3));
      }
    }
    return new PositionNames(names.build(), remarks.build());
  }

  /**
   * Semitones of the first finger above the open string, each with the name of its position; below
   * 0 behind the nut, for strings with an extension.
   */
  public ImmutableSortedMap<Integer, Position> bySemitone() {
    return bySemitone;
  }

  /** The position whose first finger lies that many semitones above the open string. */
  public Optional<Position> at(int semitones) {
    return Optional.ofNullable(bySemitone.get(semitones));
  }

  /** What players add to the name of that position: lowered, raised; often empty. */
  public String remark(int semitones) {
    return remarks.getOrDefault(semitones, "");
  }
}
