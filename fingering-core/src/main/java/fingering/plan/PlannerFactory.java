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
 * Planners for many passages, by one scoring and under one hand. The grips and the costs found for
 * one passage serve the next, so that the second takes a fraction of the time. Safe for use by many
 * threads.
 */
public final class PlannerFactory {
  private final LeftHand hand;
  private final CostCache costs;
  private final Map<Instrument, GripFinder> finders = new ConcurrentHashMap<>();

  /** Planners by a scoring, under a hand. */
  public PlannerFactory(Scoring scoring, LeftHand hand) {
    this.hand = hand;
    costs = new CostCache(scoring);
  }

  /**
   * A planner for a passage.
   *
   * @throws InfeasibleBriefException if a note lies out of the instrument's range
   */
  public Planner of(Passage passage) {
    return Planner.of(passage, finder(passage.instrument()), costs);
  }

  /**
   * A planner for a passage that takes its moments with these grips and no others. Costs are shared
   * where lists of grips are one object, not where they are merely equal.
   *
   * @param ways some of the {@link #finder grips} of each moment, at least one
   * @throws IllegalArgumentException if there is not a list for each moment, or one is empty
   */
  public Planner of(Passage passage, ImmutableList<ImmutableList<Grip>> ways) {
    if (ways.size() != passage.moments().size() || ways.stream().anyMatch(List::isEmpty)) {
      throw new IllegalArgumentException("a moment is without a grip to take it with");
    }
    return Planner.of(passage, ways, costs);
  }

  /** The finder of the grips with which an instrument takes moments of music. */
  public GripFinder finder(Instrument wanted) {
    return finders.computeIfAbsent(
        wanted, instrument -> new GripFinder(Fingerboard.of(instrument, hand)));
  }
}
