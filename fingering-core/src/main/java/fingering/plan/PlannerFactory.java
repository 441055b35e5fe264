package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.search.CostCache;
import fingering.tables.Instrument;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Makes planners for many passages with one scoring and one hand. They share caches of grips and
 * costs, which makes later passages much faster. Thread-safe.
 */
public final class PlannerFactory {
  private final LeftHand hand;
  private final CostCache costs;
  private final Map<Instrument, GripFinder> finders = new ConcurrentHashMap<>();

  /** A factory of planners with a scoring and a hand. */
  public PlannerFactory(Scoring scoring, LeftHand hand) {
    this.hand = hand;
    costs = new CostCache(scoring);
  }

  /**
   * A planner of a passage.
   *
   * @throws InfeasibleBriefException if every note is out of the instrument's range
   */
  public Planner of(Passage passage) {
    return Planner.of(passage, finder(passage.instrument()), costs);
  }

  /**
   * A planner of a passage that uses only the given grips. Cached costs are shared between lists of
   * grips that are the same object, not between equal ones.
   *
   * @param grips for each moment of the passage some of the grips that {@link #finder} finds, at
   *     least one
   * @throws IllegalArgumentException if there is not one list for each moment, or a list is empty
   */
  public Planner of(Passage passage, ImmutableList<ImmutableList<Grip>> grips) {
    if (grips.size() != passage.moments().size() || grips.stream().anyMatch(List::isEmpty)) {
      throw new IllegalArgumentException("each moment needs a list of grips that is not empty");
    }
    return Planner.of(passage, grips, costs);
  }

  /** The shared finder of grips for an instrument. */
  public GripFinder finder(Instrument instrument) {
    return finders.computeIfAbsent(instrument, key -> new GripFinder(Fingerboard.of(key, hand)));
  }
}
