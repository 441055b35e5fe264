package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.demand.Demand;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.fingerboard.LeftHand;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.search.CostCache;
import fingering.search.LayeredGraph;
import fingering.search.Path;
import fingering.search.PathFinder;
import fingering.search.Penalty;
import fingering.search.VisibleFingering;
import fingering.tables.FingeringException;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Makes plans for one passage. Safe for use by many threads; each plan is made in the thread that
 * asks.
 */
public final class Planner {
  private final Passage passage;
  private final ImmutableList<ImmutableList<Grip>> grips;
  private final CostCache costs;

  private Planner(Passage passage, ImmutableList<ImmutableList<Grip>> grips, CostCache costs) {
    this.passage = passage;
    this.grips = grips;
    this.costs = costs;
  }

  /** A planner for a passage under a medium hand. */
  public static Planner of(Passage passage, Scoring scoring) {
    return of(passage, scoring, LeftHand.MEDIUM);
  }

  /**
   * A planner for a passage: every grip of every moment is enumerated once. For many passages take
   * {@link PlannerFactory}.
   *
   * @throws InfeasibleBriefException if a note lies out of the instrument's range
   */
  public static Planner of(Passage passage, Scoring scoring, LeftHand hand) {
    return new PlannerFactory(scoring, hand).of(passage);
  }

  static Planner of(Passage passage, GripFinder finder, CostCache costs) {
    ImmutableList.Builder<ImmutableList<Grip>> all =
        ImmutableList.builderWithExpectedSize(passage.moments().size());
    for (Moment moment : passage.moments()) {
      ImmutableList<Grip> found = finder.grips(moment);
      if (found.isEmpty()) {
        throw InfeasibilityDiagnosis.outOfRange(passage, moment);
      }
      all.add(found);
    }
    return of(passage, all.build(), costs);
  }

  static Planner of(Passage passage, ImmutableList<ImmutableList<Grip>> grips, CostCache costs) {
    return new Planner(passage, grips, costs);
  }

  /** The music. */
  Passage passage() {
    return passage;
  }

  /** A plan of the music. */
  Plan plan(Brief brief, Path path) {
    return PlanAssembly.plan(brief, passage, costs.scoring(), path);
  }

  /** The same planner by other rules or weights; the grips are not sought again. */
  public Planner scoredBy(Scoring other) {
    return new Planner(passage, grips, new CostCache(other));
  }

  /** Every grip of every moment, in order of time; none is empty. */
  public ImmutableList<ImmutableList<Grip>> grips() {
    return grips;
  }

  /**
   * The best plan that meets a brief.
   *
   * @throws InfeasibleBriefException if there is none
   */
  public Plan plan(Brief brief) {
    LayeredGraph layers = layers(brief);
    return PathFinder.best(layers, brief.shown(passage))
        .map(path -> plan(brief, path))
        .orElseThrow(() -> unmet(brief));
  }

  /**
   * The best plan that meets a brief, or empty where the passage cannot show what is required.
   *
   * @throws InfeasibleBriefException if a note cannot be reached in the positions allowed
   */
  public Optional<Plan> tryPlan(Brief brief) {
    return PathFinder.best(layers(brief), brief.shown(passage)).map(path -> plan(brief, path));
  }

  /**
   * The best plans of a brief that a player can tell apart, best first; fewer where there are
   * fewer. The first is the best plan. Two plans differ where a note has another string or finger,
   * or, stopped, another position; where the hand waits under an open string is no difference, and
   * the best stands for all that are alike.
   *
   * @param k how many, 1 to {@value PathFinder#MOST}
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if k is out of range
   */
  public ImmutableList<Plan> plans(Brief brief, int k) {
    return plans(brief, k, VisibleFingering.Grain.FINGERS);
  }

  /**
   * The best plans of a brief that differ when one looks so closely, best first; fewer where there
   * are fewer. The first is the best plan, and each is the best of all that look like it.
   *
   * @param k how many, 1 to {@value PathFinder#MOST}
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if k is out of range
   */
  public ImmutableList<Plan> plans(Brief brief, int k, VisibleFingering.Grain grain) {
    LayeredGraph layers = layers(brief);
    ImmutableList<Plan> plans =
        PathFinder.best(layers, brief.shown(passage), k, grain).stream()
            .map(path -> plan(brief, path))
            .collect(ImmutableList.toImmutableList());
    if (plans.isEmpty()) {
      throw unmet(brief);
    }
    return plans;
  }

  /**
   * The ways in which a brief lets the notes of one moment be taken, each with the best plan that
   * takes them so; best first, the first being that of the best plan. Two ways differ in the
   * string, the finger or, stopped, the position of a note that begins then. Takes the time of a
   * plan for each.
   *
   * @param moment index of the moment in the passage, from 0
   * @param k how many, from 1; fewer where there are fewer
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if there is no such moment, or k is below 1
   */
  public ImmutableList<Alternative> alternatives(Brief brief, int moment, int k) {
    if (moment < 0 || moment >= grips.size() || k < 1) {
      throw new FingeringException(
          k + " ways of moment " + moment + " of " + grips.size() + " cannot be searched");
    }
    ImmutableList.Builder<Alternative> found = ImmutableList.builder();
    LayeredGraph layers = layers(brief);
    Optional<Path> path = PathFinder.best(layers, brief.shown(passage));
    if (path.isEmpty()) {
      throw unmet(brief);
    }
    for (int wanted = k; wanted > 0 && path.isPresent(); wanted--) {
      Plan plan = plan(brief, path.get());
      found.add(new Alternative(moment, plan));
      layers = otherwise(layers, moment, path.get().grips().get(moment));
      path = wanted == 1 ? Optional.empty() : PathFinder.best(layers, brief.shown(passage));
    }
    return found.build();
  }

  /** The layers without the grips that take the notes of a moment as that one does. */
  private static LayeredGraph otherwise(LayeredGraph layers, int m, Grip taken) {
    Moment moment = layers.moments().get(m);
    ImmutableList<PlannedNote> as = PlanAssembly.starting(m, moment, taken);
    ImmutableList<Grip> all = layers.grips().get(m);
    return layers.closing(
        (at, grip) -> at == m && alike(as, PlanAssembly.starting(m, moment, all.get(grip))));
  }

  private static boolean alike(ImmutableList<PlannedNote> some, ImmutableList<PlannedNote> others) {
    return IntStream.range(0, some.size()).allMatch(i -> some.get(i).takenLike(others.get(i)));
  }

  /**
   * What a brief leaves of the grips.
   *
   * @throws InfeasibleBriefException if that is nothing somewhere
   */
  LayeredGraph layers(Brief brief) {
    GripSelection left = GripSelection.of(brief, passage, grips);
    if (!left.empty().isEmpty()) {
      throw unmet(brief);
    }
    return new LayeredGraph(
        passage.moments(),
        grips,
        costs,
        OutsidePositions.counted(brief, passage.moments(), left),
        left.closing());
  }

  /** Whether some demands can be met together, whatever it costs and whatever string is asked. */
  boolean meets(Brief brief, ImmutableList<Demand> demands) {
    Brief some = brief.withDemands(demands);
    GripSelection left = GripSelection.of(some, passage.ignoringStringWords(), grips);
    return left.empty().isEmpty()
        && PathFinder.best(
                new LayeredGraph(passage.moments(), grips, costs, Penalty.NONE, left.closing()),
                some.shown(passage))
            .isPresent();
  }

  /** Says which demands cannot be met together, and where. */
  InfeasibleBriefException unmet(Brief brief) {
    return new InfeasibilityDiagnosis(this, brief).told();
  }
}
