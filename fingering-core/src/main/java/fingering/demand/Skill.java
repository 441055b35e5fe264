package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.search.Requirement;
import fingering.tables.FingeringException;
import java.util.BitSet;

/** A demand on the plan as a whole: that something is shown in it somewhere. */
public sealed interface Skill extends Demand
    permits ShowPosition, ShowStay, ShowShift, ShowTechnique {
  /** The same as an automaton that the search carries along. */
  Requirement in(Passage passage);

  /**
   * The moments of a path at which it is shown.
   *
   * @param path a grip for each moment of the passage
   */
  BitSet shownIn(Passage passage, ImmutableList<Grip> path);

  /** How much is asked for, from 1: stopped notes, whole measures, shifts, notes. */
  int asked();

  /**
   * How much of it a path shows, counted as {@link #asked}.
   *
   * @param path a grip for each moment of the passage
   */
  int amountIn(Passage passage, ImmutableList<Grip> path);

  /**
   * The same asked for in another amount.
   *
   * @throws FingeringException if so much cannot be asked for
   */
  Skill asking(int amount);

  /** Whether what several pieces show of it adds up; a stay is made in one piece or not at all. */
  boolean addsUp();
}
