package fingering.tempo;

import com.google.common.collect.ImmutableMap;
import fingering.tables.Instrument;
import fingering.tables.Table;

/** The least times of {@code times.table}, for a player of a level on an instrument. */
final class TimeTable {
  private static final String NAME = "times.table";
  private static final int FIELDS = 5;
  private static final int MICROS = 1000;
  private static final double PERCENT = 100;

  private final ImmutableMap<String, Integer> amounts;
  private final double action;
  private final double shift;

  private TimeTable(ImmutableMap<String, Integer> amounts, double action, double shift) {
    this.amounts = amounts;
    this.action = action;
    this.shift = shift;
  }

  static TimeTable of(PlayerSpeed level, Instrument instrument) {
    PlayerSpeed slower = PlayerSpeedTable.instrument(instrument.kind());
    ImmutableMap.Builder<String, Integer> amounts = ImmutableMap.builder();
    Table.beside(TimeTable.class, NAME, FIELDS)
        .rows()
        .forEach(row -> amounts.put(row.text(0), row.integer(1)));
    return new TimeTable(
        amounts.buildOrThrow(),
        level.actionPercent() / PERCENT * slower.actionPercent() / PERCENT,
        level.shiftPercent() / PERCENT * slower.shiftPercent() / PERCENT);
  }

  /** A number of the table as it stands. */
  int amount(String name) {
    Integer amount = amounts.get(name);
    if (amount == null) {
      throw new IllegalStateException(NAME + " has no row '" + name + "'");
    }
    return amount;
  }

  /** A share of the table, 1 for the whole. */
  double share(String name) {
    return amount(name) / PERCENT;
  }

  /** Microseconds that a thing of fingers or bow takes. */
  long action(String name) {
    return Math.round(amount(name) * MICROS * action);
  }

  /** Microseconds that so many units of a thing of fingers or bow take. */
  long action(String name, double units) {
    return Math.round(amount(name) * MICROS * action * units);
  }

  /**
   * Microseconds that the hand takes for a way, by Fitts's law.
   *
   * @param millimetres the way on a string of 328 mm
   * @param guided whether a finger slides along
   */
  long shift(double millimetres, boolean guided) {
    double bits = Math.log(2 * millimetres / amount("target")) / Math.log(2);
    double millis =
        amount("shift")
            + amount("shift-bit") * Math.max(0, bits)
            + (guided ? 0 : amount("changed-finger"));
    return Math.round(millis * MICROS * shift);
  }
}
