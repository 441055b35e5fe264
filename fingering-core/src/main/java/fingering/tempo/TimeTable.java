package fingering.tempo;

import com.google.common.collect.ImmutableMap;
import fingering.tables.Instrument;
import fingering.tables.Table;

/** The minimum times of {@code times.table}, scaled for a level and an instrument. */
final class TimeTable {
  private static final String NAME = "times.table";
  private static final int FIELDS = 5;
  private static final int MICROS_PER_MILLI = 1000;
  private static final double PERCENT = 100;

  private final ImmutableMap<String, Integer> amounts;
  private final double actionFactor;
  private final double shiftFactor;

  private TimeTable(
      ImmutableMap<String, Integer> amounts, double actionFactor, double shiftFactor) {
    this.amounts = amounts;
    this.actionFactor = actionFactor;
    this.shiftFactor = shiftFactor;
  }

  static TimeTable of(PlayerSpeed level, Instrument instrument) {
    PlayerSpeed onInstrument = PlayerSpeedTable.instrument(instrument.kind());
    ImmutableMap.Builder<String, Integer> amounts = ImmutableMap.builder();
    Table.load(TimeTable.class, NAME, FIELDS)
        .rows()
        .forEach(row -> amounts.put(row.text(0), row.integer(1)));
    return new TimeTable(
        amounts.buildOrThrow(),
        level.actionPercent() / PERCENT * onInstrument.actionPercent() / PERCENT,
        level.shiftPercent() / PERCENT * onInstrument.shiftPercent() / PERCENT);
  }

  /** The unscaled number of a row. */
  int amount(String name) {
    Integer amount = amounts.get(name);
    if (amount == null) {
      throw new IllegalStateException(NAME + " has no row '" + name + "'");
    }
    return amount;
  }

  /** The percentage of a row as a fraction, 1 for 100 %. */
  double share(String name) {
    return amount(name) / PERCENT;
  }

  /** The microseconds of an action of fingers or bow. */
  long action(String name) {
    return Math.round(amount(name) * MICROS_PER_MILLI * actionFactor);
  }

  /** The microseconds of a number of units of an action of fingers or bow. */
  long action(String name, double units) {
    return Math.round(amount(name) * MICROS_PER_MILLI * actionFactor * units);
  }

  /**
   * The microseconds of a shift or slide by Fitts's law (P. M. Fitts 1954, from memory): they grow
   * with the logarithm of the distance over the width of the target.
   *
   * @param millimetres the distance on a string of 328 mm, above 0
   * @param guided whether a finger slides along its string
   */
  long shift(double millimetres, boolean guided) {
    double bits = Math.log(2 * millimetres / amount("target")) / Math.log(2);
    double millis =
        amount("shift")
            + amount("shift-bit") * Math.max(0, bits)
            + (guided ? 0 : amount("changed-finger"));
    return Math.round(millis * MICROS_PER_MILLI * shiftFactor);
  }
}
