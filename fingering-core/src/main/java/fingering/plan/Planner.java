package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.demand.Demand;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.fingerboard.LeftHand;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.search.Cancellation;
import fingering.search.CostCache;
import fingering.search.LayeredGraph;
import fingering.search.Path;
import fingering.search.PathFinder;
import fingering.search.Penalty;
import fingering.search.VisibleFingering;
import fingering.tables.FingeringException;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes plans for one passage. Thread-safe; each plan is made in the calling thread. */
public final class Planner {
  private final Passage passage;
  private final ImmutableList<ImmutableList<Grip>> grips;
  private final CostCache costs;
  private final Cancellation cancellation;

  private Planner(
      Passage passage,
      ImmutableList<ImmutableList<Grip>> grips,
      CostCache costs,
      Cancellation cancellation) {
    this.passage = passage;
    this.grips = grips;
    this.costs = costs;
    this.cancellation = cancellation;
  }

  /**
   * A planner of a passage for a medium hand.
   *
   * @throws InfeasibleBriefException if every note is out of the instrument's range
   */
  public static Planner of(Passage passage, Scoring scoring) {
    return of(passage, scoring, LeftHand.MEDIUM);
  }

  /**
   * A planner of a passage. It enumerates every grip of every moment once. For many passages use a
   * {@link PlannerFactory}, which shares its caches.
   *
   * @throws InfeasibleBriefException if every note is out of the instrument's range
   */
  public static Planner of(Passage passage, Scoring scoring, LeftHand hand) {
    return new PlannerFactory(scoring, hand).of(passage);
  }

  /**
   * A passage without the notes that the instrument does not have, with a remark on them; see
   * {@link Passage#unplayable}. Every planner leaves them out.
   *
   * @throws InfeasibleBriefException if every note is out of the instrument's range
   */
  public static Passage playable(Passage passage, LeftHand hand) {
    return PlayableNotes.of(passage, new GripFinder(Fingerboard.of(passage.instrument(), hand)));
  }

  static Planner of(Passage whole, GripFinder finder, CostCache costs) {
    Passage passage = PlayableNotes.of(whole, finder);
    return of(
        passage,
        passage.moments().stream().map(finder::grips).collect(ImmutableList.toImmutableList()),
        costs);
  }

  static Planner of(Passage passage, ImmutableList<ImmutableList<Grip>> grips, CostCache costs) {
    return new Planner(passage, grips, costs, Cancellation.NEVER);
  }

  /**
   * The music that is planned. Notes that the instrument does not have are {@linkplain
   * Passage#unplayable left out}, with a remark.
   */
  public Passage passage() {
    return passage;
  }

  /** The plan that a path describes. */
  Plan plan(Brief brief, Path path) {
    return PlanAssembly.plan(brief, passage, grips, costs.scoring(), path);
  }

  /** A copy with other rules or weights; it shares the grips of this planner. */
  public Planner withScoring(Scoring newScoring) {
    return new Planner(passage, grips, new CostCache(newScoring), cancellation);
  }

  /**
   * A copy whose searches can be cancelled; it shares the grips and caches of this planner. When a
   * search is cancelled, the method that was called throws a {@link
   * java.util.concurrent.CancellationException}. Both planners can be used afterwards, and make the
   * same plans as if nothing had happened.
   */
  public Planner withCancellation(Cancellation newCancellation) {
    return new Planner(passage, grips, costs, newCancellation);
  }

  /** The grips of each moment, in score order; no list is empty. */
  public ImmutableList<ImmutableList<Grip>> grips() {
    return grips;
  }

  /**
   * The best plan that meets a brief.
   *
   * @throws InfeasibleBriefException if there is none
   */
  public Plan plan(Brief brief) {
    return tryPlan(brief).orElseThrow(() -> infeasible(brief));
  }

  /**
   * The best plan that meets a brief; empty if each note has a grip that meets it, but no path
   * shows what the brief requires.
   *
   * @throws InfeasibleBriefException if the brief leaves no grip for a note
   */
  public Optional<Plan> tryPlan(Brief brief) {
    return best(graph(brief), brief).map(path -> plan(brief, path));
  }

  /**
   * The best plans of a brief that differ for the player, best first. The first is the best plan.
   * Two plans differ if a note has another string or finger or, if stopped, another position. Plans
   * that differ only in where the hand waits under an open string count as one, and the best of
   * them is returned.
   *
   * @param k the maximum number of plans to return, 1 to {@value PathFinder#MAX_PATHS}
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if k is out of range
   */
  public ImmutableList<Plan> plans(Brief brief, int k) {
    return plans(brief, k, VisibleFingering.Grain.FINGERS);
  }

  /**
   * The best plans of a brief that differ at a level of detail, best first. The first is the best
   * plan, and each is the best of all plans that look the same at that level.
   *
   * @param k the maximum number of plans to return, 1 to {@value PathFinder#MAX_PATHS}
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if k is out of range
   */
  public ImmutableList<Plan> plans(Brief brief, int k, VisibleFingering.Grain grain) {
    ImmutableList<Plan> plans =
        paths(brief, k, grain).stream()
            .map(path -> plan(brief, path))
            .collect(ImmutableList.toImmutableList());
    if (plans.isEmpty()) {
      throw infeasible(brief);
    }
    return plans;
  }

  private ImmutableList<Path> paths(Brief brief, int k, VisibleFingering.Grain grain) {
    return PathFinder.best(graph(brief), brief.pathRequirement(passage), k, grain, cancellation);
  }

  private Optional<Path> best(LayeredGraph graph, Brief brief) {
    return PathFinder.best(graph, brief.pathRequirement(passage), cancellation);
  }

  /** The cheapest paths with the k best fingerings of some moments, best first. */
  ImmutableList<Path> choices(Brief brief, BitSet moments, int k) {
    return ChoiceSearch.best(
        graph(brief), brief.pathRequirement(passage), moments, k, cancellation);
  }

  /**
   * The best fingerings of one moment under a brief, each with the cheapest plan that uses it, best
   * first. The first is that of the best plan. Two of them differ in the string, the finger or, if
   * stopped, the position of a note that begins at the moment. The running time is that of one plan
   * for each alternative.
   *
   * @param moment index of the moment in the passage, from 0
   * @param k the maximum number of alternatives to return, from 1
   * @throws InfeasibleBriefException if no plan meets the brief
   * @throws FingeringException if the passage does not have that moment, or k is below 1
   */
  public ImmutableList<Alternative> alternatives(Brief brief, int moment, int k) {
    if (moment < 0 || moment >= grips.size() || k < 1) {
      throw new FingeringException(
          "%d alternatives at moment %d of %d cannot be listed; ask for 1 or more, at moment 0 to %d."
              .formatted(k, moment, grips.size(), grips.size() - 1));
    }
    ImmutableList.Builder<Alternative> alternatives = ImmutableList.builder();
    LayeredGraph graph = graph(brief);
    Optional<Path> path = best(graph, brief);
    if (path.isEmpty()) {
      throw infeasible(brief);
    }
    for (int missing = k; missing > 0 && path.isPresent(); missing--) {
      Plan plan = plan(brief, path.get());
      alternatives.add(new Alternative(moment, plan));
      graph = withoutFingering(graph, moment, path.get().grips().get(moment));
      path = missing == 1 ? Optional.empty() : best(graph, brief);
    }
    return alternatives.build();
  }

  /** The graph without the grips of a moment that have the same fingering as one of them. */
  private static LayeredGraph withoutFingering(LayeredGraph graph, int m, Grip used) {
    Moment moment = graph.moments().get(m);
    ImmutableList<PlannedNote> notes = PlanAssembly.starting(m, moment, used);
    ImmutableList<Grip> all = graph.grips().get(m);
    return graph.excluding(
        (at, grip) ->
            at == m && sameFingering(notes, PlanAssembly.starting(m, moment, all.get(grip))));
  }

  private static boolean sameFingering(
      ImmutableList<PlannedNote> some, ImmutableList<PlannedNote> others) {
    return IntStream.range(0, some.size()).allMatch(i -> some.get(i).sameFingering(others.get(i)));
  }

  /**
   * The search graph with the grips that a brief allows.
   *
   * @throws InfeasibleBriefException if it allows none at some moment
   */
  LayeredGraph graph(Brief brief) {
    GripSelection selection = GripSelection.of(brief, passage, grips);
    if (!selection.infeasibleMoments().isEmpty()) {
      throw infeasible(brief);
    }
    return new LayeredGraph(
        passage.moments(),
        grips,
        costs,
        OutsidePositions.of(brief, passage.moments(), selection),
        selection.filter());
  }

  /** The moments that a brief allows no grip for in its preferred positions. */
  BitSet outOfReach(Brief brief) {
    return OutsidePositions.outOfReach(
        brief, passage.moments(), GripSelection.of(brief, passage, grips));
  }

  /** Whether a plan can meet some demands together, if printed string words are ignored. */
  boolean feasible(Brief brief, ImmutableList<Demand> demands) {
    Brief some = brief.withDemands(demands);
    GripSelection selection = GripSelection.of(some, passage.ignoringStringWords(), grips);
    return selection.infeasibleMoments().isEmpty()
        && best(
                new LayeredGraph(passage.moments(), grips, costs, Penalty.NONE, selection.filter()),
                some)
            .isPresent();
  }

  /** The exception that explains why no plan meets a brief. */
  InfeasibleBriefException infeasible(Brief brief) {
    return new InfeasibilityDiagnosis(this, brief).exception();
  }
}
