package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.Demand;
import fingering.demand.MeasureSpan;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.search.RequiredStays;
import fingering.search.VisibleFingering;
import fingering.tables.FingeringException;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.Optional;
import java.util.function.Function;

/**
 * Makes the plans a teacher weighs: one in first position, and one with a real stay higher up. On
 * violin and viola the higher one stays in 3rd, on the double bass too, on the cello in 4th. Safe
 * for use by many threads.
 */
public final class PlanComparer {
  /** What the plan that keeps what is printed is called. */
  public static final String AS_PRINTED = "as printed";

  /** Stopped notes that make a stay real, longest first; a short passage has to do with less. */
  private static final ImmutableList<Integer> REAL_STAY = ImmutableList.of(8, 6, 4, 2, 1);

  /** Stopped notes in each of several positions to show, most first. */
  private static final ImmutableList<Integer> SHOWN = ImmutableList.of(4, 2, 1);

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
   * Prepares the plans of a passage.
   *
   * @param hand the player's left hand
   * @param allowed the positions the higher plans may use; empty for those up to the stay
   * @throws InfeasibleBriefException if a note lies out of range
   */
  public static PlanComparer of(
      Passage passage, Scoring scoring, LeftHand hand, ImmutableSet<Position> allowed) {
    return new PlanComparer(
        passage, Planner.of(passage, scoring, hand), allowed, ImmutableList.of());
  }

  /** The same with demands that every plan has to meet besides its own. */
  public PlanComparer demanding(ImmutableList<Demand> more) {
    return new PlanComparer(passage, planner, allowed, more);
  }

  private Brief demanded(Brief brief) {
    Brief.Builder builder = brief.toBuilder();
    demands.forEach(builder::demanding);
    return builder.build();
  }

  /** The position in which the higher plan stays. */
  public Position upper() {
    if (!allowed.isEmpty() && !allowed.contains(usualUpper())) {
      return java.util.Collections.max(allowed);
    }
    return usualUpper();
  }

  private Position usualUpper() {
    return passage.instrument().kind() == HandKind.CELLO ? Position.FOURTH : Position.THIRD;
  }

  /**
   * The plan in half and first position, or with as few and as low notes above as can be.
   *
   * @throws InfeasibleBriefException if no plan meets the demands
   */
  public Plan first() {
    return planner.plan(
        demanded(Brief.preferring("1st position", ImmutableSet.of(Position.HALF, Position.FIRST))));
  }

  /**
   * The cheapest plan with a real stay in the upper position; empty where none can be.
   *
   * @throws InfeasibleBriefException if a note cannot be reached in the positions allowed, or as
   *     the demands want it
   */
  public Optional<Plan> upperPlan() {
    Brief brief = reaching(upper().display() + " position");
    return longest(REAL_STAY, notes -> brief.showing(RequiredStays.in(upper(), notes)));
  }

  /**
   * The cheapest plan that shows 1st, 2nd and 3rd position; empty where none can be.
   *
   * @throws InfeasibleBriefException if a note cannot be reached in the positions allowed, or as
   *     the demands want it
   */
  public Optional<Plan> firstSecondThird() {
    Brief brief = reaching("1st to 3rd");
    ImmutableList<Position> shown =
        ImmutableList.of(Position.FIRST, Position.SECOND, Position.THIRD);
    return longest(SHOWN, notes -> brief.showing(new RequiredStays(shown, notes)));
  }

  /**
   * The plan that keeps what is printed; empty where nothing is printed.
   *
   * @throws InfeasibleBriefException if no plan meets the demands
   */
  public Optional<Plan> printed() {
    return passage.fingered()
        ? Optional.of(planner.plan(demanded(Brief.free(AS_PRINTED).keepingPrinted(true))))
        : Optional.empty();
  }

  /**
   * The best plan of any brief.
   *
   * @throws InfeasibleBriefException if there is none
   */
  public Plan plan(Brief brief) {
    return planner.plan(demanded(brief));
  }

  /** What the demands of a plan cost: its points above those of the plan that meets none. */
  public long above(Plan plan) {
    return plan.total() - planner.plan(Brief.free("free choice")).total();
  }

  /**
   * The best plans of several briefs, side by side. A brief that cannot be met is told in a remark.
   *
   * @throws InfeasibleBriefException if none of them can be met
   */
  public Comparison several(ImmutableList<Brief> briefs) {
    ImmutableList.Builder<Plan> plans = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    InfeasibleBriefException last = null;
    for (Brief brief : briefs) {
      try {
        plans.add(plan(brief));
      } catch (InfeasibleBriefException e) {
        remarks.add("'" + brief.name() + "' cannot be made. " + e.getMessage());
        last = e;
      }
    }
    ImmutableList<Plan> made = plans.build();
    if (made.isEmpty() && last != null) {
      throw last;
    }
    return new Comparison(passage, made, remarks.build());
  }

  /**
   * The ways to take the notes of a moment, best first; {@link Planner#alternatives}.
   *
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if there is no such moment, or k is below 1
   */
  public ImmutableList<Alternative> alternatives(Brief brief, int moment, int k) {
    return planner.alternatives(brief, moment, k);
  }

  /**
   * The ways to take some measures, best first; {@link Choice#of}.
   *
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if there are no such measures, or k is below 1
   */
  public ImmutableList<Choice> choices(Brief brief, MeasureSpan span, int k) {
    return Choice.of(planner, brief, span, k);
  }

  /**
   * The best plans of a brief that take another string or position somewhere, side by side and
   * named by their place: best, 2nd, 3rd. The finger alone is no difference.
   *
   * @param k how many, 1 to {@value fingering.search.PathFinder#MOST}; fewer where there are fewer,
   *     which a remark says
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if k is out of range
   */
  public Comparison best(Brief brief, int k) {
    ImmutableList.Builder<Plan> named = ImmutableList.builder();
    int place = 0;
    for (Plan plan : planner.plans(demanded(brief), k, VisibleFingering.Grain.PLACES)) {
      place++;
      named.add(plan.named(place(place)));
    }
    return new Comparison(
        passage, named.build(), place == k ? ImmutableList.of() : ImmutableList.of(fewer(place)));
  }

  private static String fewer(int plans) {
    return plans == 1
        ? "No other plan takes another string or position."
        : "No more than " + plans + " plans differ from one another in a string or a position.";
  }

  /**
   * What the plan is called that is the so-manieth best: best, 2nd, 3rd.
   *
   * @param number its place, from 1
   */
  public static String place(int number) {
    return number == 1 ? "best" : ordinal(number);
  }

  private static String ordinal(int number) {
    int last = number / 10 % 10 == 1 ? 0 : number % 10;
    return number + (last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th");
  }

  /**
   * The plans side by side, with the third that shows 2nd position too where asked for.
   *
   * @throws InfeasibleBriefException if a plan cannot reach a note, or meet the demands
   */
  public Comparison compare(boolean withSecond) {
    ImmutableList.Builder<Plan> plans = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    Plan first = first();
    plans.add(first);
    outside(first, remarks);
    add(upperPlan(), "a stay in " + upper().display() + " position", plans, remarks);
    if (withSecond) {
      add(firstSecondThird(), "1st, 2nd and 3rd position together", plans, remarks);
    }
    printed().ifPresent(plans::add);
    ImmutableList<Plan> made = plans.build();
    cheaper(made).ifPresent(remarks::add);
    return new Comparison(passage, made, remarks.build());
  }

  /**
   * That a plan of free choice costs less than any of these, where it does; nothing where positions
   * are allowed, for these plans only begin in them.
   */
  private Optional<String> cheaper(ImmutableList<Plan> made) {
    if (!allowed.isEmpty()) {
      return Optional.empty();
    }
    long least = made.stream().mapToLong(Plan::total).min().orElseThrow();
    long free = plan(Brief.free("free choice")).total();
    return free < least
        ? Optional.of(
            "A plan of free choice costs %d points, %d less than the cheapest of these: see 'plan --choose free'."
                .formatted(free, least - free))
        : Optional.empty();
  }

  private static void add(
      Optional<Plan> plan,
      String what,
      ImmutableList.Builder<Plan> plans,
      ImmutableList.Builder<String> remarks) {
    if (plan.isEmpty()) {
      remarks.add("No fingering of this passage shows " + what + ".");
      return;
    }
    plans.add(plan.get());
    outside(plan.get(), remarks);
    if (plan.get().brief().requirement() instanceof RequiredStays stays
        && stays.notes() < (stays.positions().size() == 1 ? REAL_STAY : SHOWN).get(0)) {
      remarks.add(
          "'"
              + plan.get().name()
              + "' can stay for no more than "
              + stays.notes()
              + (stays.notes() == 1 ? " stopped note." : " stopped notes."));
    }
  }

  private static void outside(Plan plan, ImmutableList.Builder<String> remarks) {
    int outside = plan.notesOutside();
    if (outside > 0) {
      remarks.add(
          "'"
              + plan.name()
              + "' leaves its positions for "
              + outside
              + (outside == 1 ? " note" : " notes")
              + ", marked !: what they cannot reach, and what lies close by.");
    }
  }

  private Brief reaching(String name) {
    if (!allowed.isEmpty()) {
      return Brief.within(name, allowed);
    }
    return Brief.preferring(name, ImmutableSet.copyOf(Position.range(Position.HALF, upper())));
  }

  private Optional<Plan> longest(ImmutableList<Integer> lengths, Function<Integer, Brief> brief) {
    for (int notes : lengths) {
      Optional<Plan> plan = planner.tryPlan(demanded(brief.apply(notes)));
      if (plan.isPresent()) {
        return plan;
      }
    }
    return Optional.empty();
  }
}
