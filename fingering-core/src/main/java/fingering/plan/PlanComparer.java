package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.AllowPositions;
import fingering.demand.Demand;
import fingering.demand.MeasureSpan;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.search.Cancellation;
import fingering.search.RequiredStays;
import fingering.search.VisibleFingering;
import fingering.tables.FingeringException;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.Collections;
import java.util.Optional;
import java.util.function.Function;

/**
 * Makes the plans that a teacher compares: one in first position, one mainly in an upper position,
 * and one that goes there for part of the passage. The upper position is 3rd on violin, viola and
 * double bass, and 4th on the cello. Thread-safe.
 */
public final class PlanComparer {
  /** The name of the plan that keeps printed fingers, strings and positions. */
  public static final String AS_PRINTED = "as printed";

  /** The lengths to try for a stay, in stopped notes. A short passage may only allow a few. */
  static final ImmutableList<Integer> STAY_LENGTHS = ImmutableList.of(8, 6, 4, 2, 1);

  /** The lengths to try for stays in each of several positions, in stopped notes. */
  static final ImmutableList<Integer> SHORT_STAY_LENGTHS = ImmutableList.of(4, 2, 1);

  /**
   * A plan is mainly in the upper position only if it has this share of its stopped notes there, as
   * one part of so many (common practice, no source).
   */
  static final int MAINLY = 4;

  /** The same for a plan that goes there for part of the passage. */
  static final int PARTLY = 10;

  private static final ImmutableSet<Position> LOW = ImmutableSet.of(Position.HALF, Position.FIRST);

  private static final String FREE_CHOICE = "free choice";

  private final Passage passage;
  private final Planner planner;
  private final ImmutableSet<Position> allowed;
  private final ImmutableList<Demand> demands;

  private PlanComparer(
      Passage passage,
      Planner planner,
      ImmutableSet<Position> allowed,
      ImmutableList<Demand> demands) {
    this.passage = passage;
    this.planner = planner;
    this.allowed = allowed;
    this.demands = demands;
  }

  /**
   * A comparer of plans for a passage.
   *
   * @param hand the player's left hand
   * @param allowed the positions that the plans may use; empty for all. The first-position plan
   *     ignores them if neither half nor 1st is among them
   * @throws InfeasibleBriefException if every note is out of the instrument's range
   */
  public static PlanComparer of(
      Passage passage, Scoring scoring, LeftHand hand, ImmutableSet<Position> allowed) {
    Planner planner = Planner.of(passage, scoring, hand);
    return new PlanComparer(planner.passage(), planner, allowed, ImmutableList.of());
  }

  /** A copy with other demands, which every plan has to meet besides those of its brief. */
  public PlanComparer withDemands(ImmutableList<Demand> newDemands) {
    return new PlanComparer(passage, planner, allowed, newDemands);
  }

  /**
   * A copy whose plans may use other positions. It keeps what the planner has computed.
   *
   * @param newAllowed the positions; empty for all
   */
  public PlanComparer withAllowed(ImmutableSet<Position> newAllowed) {
    return new PlanComparer(passage, planner, newAllowed, demands);
  }

  /** The music that is planned, without notes that the instrument does not have. */
  public Passage passage() {
    return passage;
  }

  /** A copy whose searches can be cancelled; see {@link Planner#withCancellation}. */
  public PlanComparer withCancellation(Cancellation cancellation) {
    return new PlanComparer(passage, planner.withCancellation(cancellation), allowed, demands);
  }

  /** A brief with the demands of this comparer; those that it has already are not repeated. */
  private Brief withOwnDemands(Brief brief) {
    Brief.Builder builder = brief.toBuilder();
    demands.stream()
        .filter(demand -> !brief.demands().contains(demand))
        .forEach(builder::addDemand);
    return builder.build();
  }

  /** The position in which the upper plan mainly is. */
  public Position upperPosition() {
    if (!allowed.isEmpty() && !allowed.contains(usualUpperPosition())) {
      return Collections.max(allowed);
    }
    return usualUpperPosition();
  }

  private Position usualUpperPosition() {
    return passage.instrument().kind() == HandKind.CELLO ? Position.FOURTH : Position.THIRD;
  }

  /**
   * The plan in half and first position. As few notes as possible are higher, and as low as
   * possible.
   *
   * @throws InfeasibleBriefException if no plan meets the demands
   */
  public Plan firstPositionPlan() {
    Brief brief = Brief.preferring("1st position", LOW);
    return plan(Collections.disjoint(allowed, LOW) ? brief : withinAllowed(brief));
  }

  /**
   * The plan mainly in the upper position: as many stopped notes as possible are there. See {@link
   * Brief#mainlyIn} for when the hand leaves and comes back. Somewhere it stays for at least 8
   * stopped notes, or as many as the passage allows. Of these plans it is the cheapest; empty if no
   * stopped note can be played there.
   *
   * @throws InfeasibleBriefException if the allowed positions and the demands leave no grip for a
   *     note
   */
  public Optional<Plan> upperPositionPlan() {
    Brief brief =
        withinAllowed(Brief.mainlyIn(upperPosition().display() + " position", upperPosition()));
    return longestStay(STAY_LENGTHS, notes -> stayingUp(brief, notes));
  }

  /**
   * The cheapest plan that goes to the upper position for part of the passage: it stays there for
   * at least 8 stopped notes, or as many as the passage allows. Elsewhere it is where the rules put
   * it, at most as high. Empty if no stopped note can be played in the upper position.
   *
   * @throws InfeasibleBriefException if the allowed positions and the demands leave no grip for a
   *     note
   */
  public Optional<Plan> partlyUpperPlan() {
    Brief brief = upTo("partly " + upperPosition().display());
    return longestStay(STAY_LENGTHS, notes -> stayingUp(brief, notes));
  }

  private Brief stayingUp(Brief brief, int notes) {
    return brief.withRequirement(RequiredStays.in(upperPosition(), notes));
  }

  /**
   * The cheapest plan with stays in 1st, 2nd and 3rd position, as long as the passage allows; empty
   * if there is none.
   *
   * @throws InfeasibleBriefException if the allowed positions and the demands leave no grip for a
   *     note
   */
  public Optional<Plan> firstToThirdPlan() {
    Brief brief = upTo("1st to 3rd");
    ImmutableList<Position> positions =
        ImmutableList.of(Position.FIRST, Position.SECOND, Position.THIRD);
    return longestStay(
        SHORT_STAY_LENGTHS, notes -> brief.withRequirement(new RequiredStays(positions, notes)));
  }

  /**
   * The plan that keeps printed fingers, strings and positions; empty if none is printed.
   *
   * @throws InfeasibleBriefException if no plan meets the demands
   */
  public Optional<Plan> asPrintedPlan() {
    return passage.fingered()
        ? Optional.of(plan(Brief.free(AS_PRINTED).withKeepPrinted(true)))
        : Optional.empty();
  }

  /**
   * The best plan of a brief and the demands of this comparer.
   *
   * @throws InfeasibleBriefException if there is none
   */
  public Plan plan(Brief brief) {
    return planner.plan(withOwnDemands(brief));
  }

  /**
   * The best plans of several briefs, side by side. A remark names each brief that cannot be met.
   *
   * @throws InfeasibleBriefException if none of them can be met
   */
  public Comparison compareBriefs(ImmutableList<Brief> briefs) {
    ImmutableList.Builder<Plan> plans = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    InfeasibleBriefException last = null;
    for (Brief brief : briefs) {
      try {
        plans.add(plan(brief));
      } catch (InfeasibleBriefException e) {
        remarks.add("'" + brief.name() + "' cannot be planned. " + e.getMessage());
        last = e;
      }
    }
    ImmutableList<Plan> feasible = plans.build();
    if (feasible.isEmpty() && last != null) {
      throw last;
    }
    return new Comparison(passage, feasible, remarks.build());
  }

  /**
   * The best fingerings of a moment under a brief and the demands of this comparer, best first; see
   * {@link Planner#alternatives}.
   *
   * @throws InfeasibleBriefException if no plan meets the brief
   * @throws FingeringException if the passage does not have that moment, or k is below 1
   */
  public ImmutableList<Alternative> alternatives(Brief brief, int moment, int k) {
    return planner.alternatives(withOwnDemands(brief), moment, k);
  }

  /**
   * The best fingerings of some measures under a brief and the demands of this comparer, best
   * first; see {@link Choice#best}.
   *
   * @throws InfeasibleBriefException if no plan meets the brief
   * @throws FingeringException if the passage does not have these measures, no note begins in them,
   *     or k is below 1
   */
  public ImmutableList<Choice> choices(Brief brief, MeasureSpan span, int k) {
    return Choice.best(planner, withOwnDemands(brief), span, k);
  }

  /**
   * The best plans of a brief that differ in a string or position, side by side and named by rank:
   * best, 2nd, 3rd. Plans that differ only in fingers count as one. A remark says if there are
   * fewer than requested.
   *
   * @param k the maximum number of plans to return, 1 to {@value
   *     fingering.search.PathFinder#MAX_PATHS}
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if k is out of range
   */
  public Comparison best(Brief brief, int k) {
    ImmutableList.Builder<Plan> plans = ImmutableList.builder();
    int rank = 0;
    for (Plan plan : planner.plans(withOwnDemands(brief), k, VisibleFingering.Grain.PLACES)) {
      rank++;
      plans.add(plan.withName(PlanRank.name(rank)));
    }
    return new Comparison(
        passage, plans.build(), rank == k ? ImmutableList.of() : ImmutableList.of(fewer(rank)));
  }

  private static String fewer(int plans) {
    return plans == 1
        ? "No other plan uses a different string or position."
        : "Only " + plans + " plans differ from one another in a string or a position.";
  }

  /**
   * The first-position plan and the upper-position plan side by side; the plan that keeps the
   * printed fingering if there is one; and last the plan that is only partly in the upper position,
   * if it differs from all others. If no position above 1st is allowed, there are no upper plans. A
   * plan with too few of its notes in the upper position is left out, with a remark: see {@link
   * #MAINLY} and {@link #PARTLY}.
   *
   * @param withSecond whether to add the plan that shows 1st, 2nd and 3rd position
   * @throws InfeasibleBriefException if the allowed positions and the demands leave no grip for a
   *     note, or no first-position plan meets the demands
   */
  public Comparison comparePositions(boolean withSecond) {
    ImmutableList.Builder<Plan> plans = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    Plan first = firstPositionPlan();
    plans.add(first);
    boolean higher = upperPosition().compareTo(Position.FIRST) > 0;
    if (higher) {
      upperPositionPlan()
          .ifPresentOrElse(
              plan -> addIfThere(plan, MAINLY, plans, remarks),
              () -> remarks.add(unshown("a stay in " + upperPosition().display() + " position")));
    } else {
      remarks.add("No position above 1st is allowed, so there is no higher plan to compare.");
    }
    if (withSecond) {
      firstToThirdPlan()
          .ifPresentOrElse(
              plan -> add(plan, plans, remarks),
              () -> remarks.add(unshown("1st, 2nd and 3rd position together")));
    }
    asPrintedPlan().ifPresent(plans::add);
    if (higher) {
      ImmutableList<Plan> others = plans.build();
      partlyUpperPlan()
          .filter(plan -> others.stream().noneMatch(other -> other.sameFingering(plan)))
          .ifPresent(plan -> addIfThere(plan, PARTLY, plans, remarks));
    }
    ImmutableList<Plan> compared = plans.build();
    cheaperPlan(compared).ifPresent(remarks::add);
    ImmutableList<String> details =
        compared.stream()
            .flatMap(plan -> columnRemarks().outside(plan).stream())
            .collect(ImmutableList.toImmutableList());
    return new Comparison(passage, compared, remarks.build(), details);
  }

  /**
   * The remark that a plan in any positions costs less than all of these, if it does. There is no
   * remark if only some positions are allowed, because that plan would not keep to them.
   */
  private Optional<String> cheaperPlan(ImmutableList<Plan> compared) {
    if (!allowed.isEmpty()) {
      return Optional.empty();
    }
    long lowest = compared.stream().mapToLong(Plan::total).min().orElseThrow();
    long free = plan(Brief.free(FREE_CHOICE)).total();
    return free < lowest
        ? Optional.of("A plan with free choice of positions ('free') is easier than all of these.")
        : Optional.empty();
  }

  private static String unshown(String what) {
    return "No fingering of this passage shows " + what + ".";
  }

  private void add(
      Plan plan, ImmutableList.Builder<Plan> plans, ImmutableList.Builder<String> remarks) {
    plans.add(plan);
    remarks.addAll(columnRemarks().of(plan));
  }

  /** Adds a plan if enough of its stopped notes are in the upper position, or else a remark. */
  private void addIfThere(
      Plan plan,
      int share,
      ImmutableList.Builder<Plan> plans,
      ImmutableList.Builder<String> remarks) {
    int there = plan.notesByPosition().getOrDefault(upperPosition(), 0);
    if (there * share >= plan.stoppedNotes()) {
      add(plan, plans, remarks);
      return;
    }
    remarks.add(
        "'%s' is left out: only %d of its %d stopped notes would be in %s."
            .formatted(plan.name(), there, plan.stoppedNotes(), upperPosition().display()));
  }

  private ColumnRemarks columnRemarks() {
    return new ColumnRemarks(passage, planner, upperPosition());
  }

  private Brief withinAllowed(Brief brief) {
    return allowed.isEmpty()
        ? brief
        : brief.toBuilder().addDemand(new AllowPositions(allowed, MeasureSpan.WHOLE)).build();
  }

  /** A brief for the positions allowed, or for all up to the upper one if none is named. */
  private Brief upTo(String name) {
    if (!allowed.isEmpty()) {
      return Brief.within(name, allowed);
    }
    return Brief.preferring(
        name, ImmutableSet.copyOf(Position.range(Position.HALF, upperPosition())));
  }

  private Optional<Plan> longestStay(
      ImmutableList<Integer> lengths, Function<Integer, Brief> brief) {
    for (int notes : lengths) {
      Optional<Plan> plan = planner.tryPlan(withOwnDemands(brief.apply(notes)));
      if (plan.isPresent()) {
        return plan;
      }
    }
    return Optional.empty();
  }
}
