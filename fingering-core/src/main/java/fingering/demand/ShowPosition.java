package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.search.Requirement;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.BitSet;

/**
 * Requires a number of stopped notes in a position, consecutive or not. Open strings and harmonics
 * do not count; a held note counts only where it begins.
 *
 * @param position the position
 * @param notes the number of stopped notes, 1 to {@value #MAX}
 */
public record ShowPosition(Position position, int notes) implements Skill {
  /** The most notes that can be required. */
  public static final int MAX = 100;

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number of notes is out of range
   */
  public ShowPosition {
    if (notes < 1 || notes > MAX) {
      throw new FingeringException(
          notes + " notes in a position cannot be required; ask for 1 to " + MAX);
    }
  }

  /** The number of notes that a grip stops in the position at a moment. */
  int shown(Moment moment, Grip grip) {
    int shown = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      Placement placement = grip.placements().get(i);
      if (placement.stopped()
          && placement.frame().position().equals(position)
          && moment.starting().contains(grip.notes(moment).get(i))) {
        shown++;
      }
    }
    return shown;
  }

  @Override
  public Requirement requirement(Passage passage) {
    return BoundedCount.ofGrips(notes, (m, before, now) -> shown(passage.moments().get(m), now));
  }

  @Override
  public BitSet shownIn(Passage passage, ImmutableList<Grip> path) {
    BitSet moments = new BitSet();
    for (int m = 0; m < path.size(); m++) {
      moments.set(m, shown(passage.moments().get(m), path.get(m)) > 0);
    }
    return moments;
  }

  @Override
  public int amount() {
    return notes;
  }

  @Override
  public int amountShown(Passage passage, ImmutableList<Grip> path) {
    int shown = 0;
    for (int m = 0; m < path.size(); m++) {
      shown += shown(passage.moments().get(m), path.get(m));
    }
    return shown;
  }

  @Override
  public Skill withAmount(int amount) {
    return new ShowPosition(position, amount);
  }

  @Override
  public String text() {
    return "show "
        + position.display()
        + " position in "
        + notes
        + (notes == 1 ? " stopped note" : " stopped notes");
  }
}
