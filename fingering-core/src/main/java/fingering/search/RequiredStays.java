package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.tables.FingeringException;
import fingering.tables.Position;

/**
 * Requires a stay in each of some positions: so many stopped notes, one after another, without the
 * hand leaving the position. Open strings and harmonics neither count nor break a stay.
 *
 * @param positions the positions to show
 * @param notes stopped notes of a stay, from 1
 */
public record RequiredStays(ImmutableList<Position> positions, int notes) implements Requirement {
  /** More strings than any instrument has. */
  private static final int MOST_STOPPED = 15;

  /**
   * Checks the components.
   *
   * @throws FingeringException if there are not 1 to 8 positions, or not 1 to 100 notes
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

  // A state is the set of positions shown, and, for the position the hand is in, the notes so far.
  private int run() {
    return positions.size() * notes;
  }

  @Override
  public int states() {
    return (1 << positions.size()) * (run() + 1);
  }

  // A symbol is the place of the position among those to show, from 1, and the notes stopped.
  @Override
  public long symbols() {
    return (positions.size() + 1L) * (MOST_STOPPED + 1);
  }

  @Override
  public long symbol(int moment, Grip before, Grip now) {
    int position = positions.indexOf(now.frame().position());
    return (position + 1L) * (MOST_STOPPED + 1) + Math.min(MOST_STOPPED, stopped(now));
  }

  @Override
  public int next(int state, long symbol) {
    int shown = state / (run() + 1);
    int running = state % (run() + 1);
    int position = (int) (symbol / (MOST_STOPPED + 1)) - 1;
    if (position < 0 || (shown & 1 << position) != 0) {
      return shown * (run() + 1);
    }
    // Runs of one position occupy the numbers position * notes + 1 to position * notes + notes - 1.
    int soFar =
        running > position * notes && running <= (position + 1) * notes
            ? running - position * notes
            : 0;
    int reached = soFar + (int) (symbol % (MOST_STOPPED + 1));
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
