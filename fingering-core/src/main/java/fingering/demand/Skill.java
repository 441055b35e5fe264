package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.search.Requirement;
import fingering.tables.FingeringException;
import java.util.BitSet;

/**
 * A demand on the plan as a whole: something that it must show somewhere. For one of your own, use
 * {@link OwnSkill}.
 */
public sealed interface Skill extends Demand
    permits ShowPosition, ShowStay, ShowShift, ShowTechnique, OwnSkill {
  /** The automaton that checks it along a path through a passage. */
  Requirement requirement(Passage passage);

  /**
   * The moments of a path at which it is shown.
   *
   * @param path a grip for each moment of the passage
   */
  BitSet shownIn(Passage passage, ImmutableList<Grip> path);

  /** The amount required, from 1, in stopped notes, whole measures, shifts or notes. */
  int amount();

  /**
   * The amount that a path shows, in the unit of {@link #amount}. It may be more than required. It
   * is the number of moments at which the skill is shown, unless the skill counts something else.
   *
   * @param path a grip for each moment of the passage
   */
  default int amountShown(Passage passage, ImmutableList<Grip> path) {
    return shownIn(passage, path).cardinality();
  }

  /**
   * A copy with another amount.
   *
   * @throws FingeringException if the amount is out of range
   */
  Skill withAmount(int amount);

  /**
   * Whether the amounts of several pieces may be added, as usual; a stay has to be in one piece.
   */
  default boolean additive() {
    return true;
  }
}
