package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.tables.FingeringException;
import fingering.tables.Position;

/**
 * Requires a stay (restez) in each of some positions: a number of successive stopped notes without
 * the hand leaving the position. Open strings and harmonics neither count nor interrupt a stay.
 *
 * @param positions the positions, 1 to 8
 * @param notes the number of stopped notes of each stay, 1 to 100
 */
public record RequiredStays(ImmutableList<Position> positions, int notes) implements Requirement {
  /** The cap on stopped notes at one moment; no instrument has more strings. */
  private static final int MAX_STOPPED = 15;

  /**
   * Checks the components.
   *
   * @throws FingeringException if a number is out of range
   */
  public RequiredStays {
    if (positions.isEmpty() || positions.size() > 8 || notes < 1 || notes > 100) {
      throw new FingeringException(
          "a stay of " + notes + " notes in " + positions.size() + " positions cannot be required");
    }
  }

  /** A stay in one position. */
  public static RequiredStays in(Position position, int notes) {
    return new RequiredStays(ImmutableList.of(position), notes);
  }

  // A state is the set of positions already shown, and the current run: the position of the hand
  // with the number of notes so far.
  private int run() {
    return positions.size() * notes;
  }

  @Override
  public int states() {
    return (1 << positions.size()) * (run() + 1);
  }

  // A symbol is the index of the position in the list, from 1, and the number of stopped notes.
  @Override
  public long symbols() {
    return (positions.size() + 1L) * (MAX_STOPPED + 1);
  }

  @Override
  public long symbol(int moment, Grip before, Grip now) {
    int position = positions.indexOf(now.frame().position());
    return (position + 1L) * (MAX_STOPPED + 1) + Math.min(MAX_STOPPED, stopped(now));
  }

  @Override
  public int next(int state, long symbol) {
    int shown = state / (run() + 1);
    int current = state % (run() + 1);
    int position = (int) (symbol / (MAX_STOPPED + 1)) - 1;
    if (position < 0 || (shown & 1 << position) != 0) {
      return shown * (run() + 1);
    }
    // A run in a position has the numbers position * notes + 1 to position * notes + notes - 1.
    int soFar =
        current > position * notes && current <= (position + 1) * notes
            ? current - position * notes
            : 0;
    int reached = soFar + (int) (symbol % (MAX_STOPPED + 1));
    if (reached >= notes) {
      return (shown | 1 << position) * (run() + 1);
    }
    return shown * (run() + 1) + (reached == 0 ? 0 : position * notes + reached);
  }

  private static int stopped(Grip grip) {
    int stopped = 0;
    for (Placement placement : grip.placements()) {
      stopped += placement.stopped() ? 1 : 0;
    }
    return stopped;
  }

  @Override
  public boolean satisfied(int state) {
    return state / (run() + 1) == (1 << positions.size()) - 1;
  }
}
