package fingering.tables;

import com.google.common.collect.ImmutableSortedMap;
import java.util.Locale;
import java.util.Optional;

/**
 * Names of the positions of cello and double bass, which depend on the number of semitones from the
 * open string to the first finger of the closed hand.
 */
public final class PositionNames {
  private static final String NO_REMARK = "-";

  private final ImmutableSortedMap<Integer, Position> bySemitone;
  private final ImmutableSortedMap<Integer, String> remarks;

  private PositionNames(
      ImmutableSortedMap<Integer, Position> bySemitone,
      ImmutableSortedMap<Integer, String> remarks) {
    this.bySemitone = bySemitone;
    this.remarks = remarks;
  }

  /**
   * The position names of an instrument; empty for violin and viola, which count letters instead.
   */
  public static PositionNames of(Instrument instrument) {
    ImmutableSortedMap.Builder<Integer, Position> names = ImmutableSortedMap.naturalOrder();
    ImmutableSortedMap.Builder<Integer, String> remarks = ImmutableSortedMap.naturalOrder();
    for (Table.Row row : Table.read("positions.table", 5).rows()) {
      if (row.text(0).equals(instrument.kind().name().toLowerCase(Locale.ROOT))) {
        try {
          names.put(row.integer(1), Position.parse(row.text(2)));
        } catch (FingeringException e) {
          throw row.error(e);
        }
        remarks.put(row.integer(1), row.text(3).equals(NO_REMARK) ? "" : row.text(3));
      }
    }
    return new PositionNames(names.build(), remarks.build());
  }

  /**
   * The position for each number of semitones from the open string to the first finger. Numbers
   * below 0 are behind the nut, on a string with an extension.
   */
  public ImmutableSortedMap<Integer, Position> bySemitone() {
    return bySemitone;
  }

  /** The position whose first finger is that many semitones above the open string. */
  public Optional<Position> at(int semitones) {
    return Optional.ofNullable(bySemitone.get(semitones));
  }

  /**
   * The addition to the name of that position, such as lowered or raised; empty if there is none.
   */
  public String remark(int semitones) {
    return remarks.getOrDefault(semitones, "");
  }
}
