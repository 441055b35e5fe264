package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Table;
import java.util.Locale;

/** Reads {@code levels.table}: the speed of the built-in levels and of instruments. */
final class PlayerSpeedTable {
  private static final String NAME = "levels.table";
  private static final int FIELDS = 5;

  private PlayerSpeedTable() {}

  static ImmutableList<PlayerSpeed> levels() {
    return rows("level");
  }

  /** The times on an instrument, in percent of those on the violin. */
  static PlayerSpeed instrument(HandKind kind) {
    String name = kind.name().toLowerCase(Locale.ROOT);
    return rows("instrument").stream()
        .filter(row -> row.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(NAME + " has no row for the " + name));
  }

  private static ImmutableList<PlayerSpeed> rows(String kind) {
    return Table.load(PlayerSpeedTable.class, NAME, FIELDS).rows().stream()
        .filter(row -> row.text(0).equals(kind))
        .map(row -> new PlayerSpeed(row.text(1), row.integer(2), row.integer(3)))
        .collect(ImmutableList.toImmutableList());
  }
}
