package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Table;
import java.util.Locale;

/** The levels and the instruments of {@code levels.table}. */
final class LevelTable {
  private static final String NAME = "levels.table";
  private static final int FIELDS = 5;

  private LevelTable() {}

  static ImmutableList<Level> levels() {
    return rows("level");
  }

  /** How much longer everything takes on an instrument, in the form of a level. */
  static Level instrument(HandKind kind) {
    String name = kind.name().toLowerCase(Locale.ROOT);
    return rows("instrument").stream()
        .filter(row -> row.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(NAME + " has no row for the " + name));
  }

  private static ImmutableList<Level> rows(String kind) {
    return Table.beside(LevelTable.class, NAME, FIELDS).rows().stream()
        .filter(row -> row.text(0).equals(kind))
        .map(row -> new Level(row.text(1), row.integer(2), row.integer(3)))
        .collect(ImmutableList.toImmutableList());
  }
}
