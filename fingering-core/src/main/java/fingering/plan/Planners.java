package fingering.plan;

import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.GripFinder;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.search.Costs;
import fingering.tables.Instrument;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Planners for many passages, by one scoring and under one hand. The grips and the costs found for
 * one passage serve the next, so that the second takes a fraction of the time. Safe for use by many
 * threads.
 */
public final class Planners {
  private final LeftHand hand;
  private final Costs costs;
  private final Map<Instrument, GripFinder> finders = new ConcurrentHashMap<>();

  /** Planners by a scoring, under a hand. */
  public Planners(Scoring scoring, LeftHand hand) {
    this.hand = hand;
    costs = new Costs(scoring);
  }

  /**
   * A planner for a passage.
   *
   * @throws InfeasibleBriefException if a note lies out of the instrument's range
   */
  public Planner of(Passage passage) {
    GripFinder finder =
        finders.computeIfAbsent(
            passage.instrument(), instrument -> new GripFinder(Fingerboard.of(instrument, hand)));
    return Planner.of(passage, finder, costs);
  }
}
