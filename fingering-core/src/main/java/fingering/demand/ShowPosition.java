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
 * Show a position: so many stopped notes in it, together or not. Open strings and harmonics never
 * count, nor does a note that is only held on.
 *
 * @param position the position
 * @param notes stopped notes, 1 to {@value #MOST}
 */
public record ShowPosition(Position position, int notes) implements Skill {
  /** The most notes that can be asked for. */
  public static final int MOST = 100;

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number of notes lies out of its range
   */
  public ShowPosition {
    if (notes < 1 || notes > MOST) {
      throw new FingeringException(
          notes + " notes cannot be asked for in a position; ask for 1 to " + MOST);
    }
  }

  /** How many notes of a moment a grip stops in the position. */
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
  public Requirement in(Passage passage) {
    return BoundedCount.to(notes, (m, before, now) -> shown(passage.moments().get(m), now));
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
  public int asked() {
    return notes;
  }

  @Override
  public int amountIn(Passage passage, ImmutableList<Grip> path) {
    int shown = 0;
    for (int m = 0; m < path.size(); m++) {
      shown += shown(passage.moments().get(m), path.get(m));
    }
    return shown;
  }

  @Override
  public Skill asking(int amount) {
    return new ShowPosition(position, amount);
  }

  @Override
  public boolean addsUp() {
    return true;
  }

  @Override
  public String words() {
    return "show "
        + position.display()
        + " position in "
        + notes
        + (notes == 1 ? " stopped note" : " stopped notes");
  }
}
