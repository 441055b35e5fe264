package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.search.Requirement;
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
}
