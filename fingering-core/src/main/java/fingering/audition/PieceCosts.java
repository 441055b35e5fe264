package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The cost of a piece by the levels of skills that it shows, as far as it has been searched. Higher
 * levels never cost less. A search therefore gives a lower bound for all higher levels, and the
 * plan that it finds an upper bound for all levels that the plan reaches. Not thread-safe.
 */
final class PieceCosts {
  /** The cost of levels that the piece cannot reach; more than any plan costs. */
  static final long INFEASIBLE = Long.MAX_VALUE / 1024;

  /**
   * A plan that a search found.
   *
   * @param plan the plan
   * @param levels the level that it reaches, by skill
   */
  record KnownPlan(Plan plan, ImmutableList<Integer> levels) {}

  /**
   * The result of a search.
   *
   * @param levels the levels required, by skill
   * @param cost points of the cheapest plan that reaches them, or {@link #INFEASIBLE}
   */
  record SearchResult(ImmutableList<Integer> levels, long cost) {}

  private final AuditionPiece piece;
  private final ImmutableList<LeveledSkill> skills;
  private final List<SearchResult> searches = new ArrayList<>();
  private final List<KnownPlan> plans = new ArrayList<>();

  PieceCosts(AuditionPiece piece, ImmutableList<LeveledSkill> skills) {
    this.piece = piece;
    this.skills = skills;
    addPlan(piece.cheapest());
    searches.add(
        new SearchResult(
            skills.stream().map(skill -> 0).collect(ImmutableList.toImmutableList()),
            piece.cheapest().total()));
  }

  AuditionPiece piece() {
    return piece;
  }

  /** The plans found, the cheapest plan of the piece first. More may be added at the end. */
  List<KnownPlan> plans() {
    return plans;
  }

  /** The results of the searches, in order. More may be added at the end. */
  List<SearchResult> searches() {
    return searches;
  }

  private void addPlan(Plan plan) {
    plans.add(
        new KnownPlan(
            plan,
            skills.stream()
                .map(skill -> piece.counts() ? skill.level(plan) : 0)
                .collect(ImmutableList.toImmutableList())));
  }

  /** The level of a skill that the cheapest plan of the piece reaches. */
  int levelOfCheapest(int skill) {
    return plans.get(0).levels().get(skill);
  }

  /** A level of one skill, and 0 of the others. */
  ImmutableList<Integer> only(int skill, int level) {
    return IntStream.range(0, skills.size())
        .mapToObj(j -> j == skill ? level : 0)
        .collect(ImmutableList.toImmutableList());
  }

  /** The cheapest known plan that reaches some levels. */
  Optional<KnownPlan> best(ImmutableList<Integer> levels) {
    return plans.stream()
        .filter(known -> atMost(levels, known.levels()))
        .min(Comparator.comparingLong(known -> known.plan().total()));
  }

  private static boolean atMost(ImmutableList<Integer> some, ImmutableList<Integer> others) {
    return IntStream.range(0, some.size()).allMatch(j -> some.get(j) <= others.get(j));
  }

  /** Whether the cost of some levels is known exactly. */
  boolean exact(ImmutableList<Integer> levels) {
    long lowerBound =
        searches.stream()
            .filter(result -> atMost(result.levels(), levels))
            .mapToLong(SearchResult::cost)
            .max()
            .orElseThrow();
    return lowerBound == INFEASIBLE
        || best(levels).map(known -> known.plan().total() == lowerBound).orElse(false);
  }

  /**
   * Searches the cheapest plan that reaches some levels, if its cost is not known exactly.
   *
   * @throws FingeringException if the levels need more states than the search allows
   */
  void search(ImmutableList<Integer> levels) {
    if (exact(levels)) {
      return;
    }
    Brief.Builder brief = piece.cheapest().brief().toBuilder();
    IntStream.range(0, skills.size())
        .filter(j -> levels.get(j) > 0)
        .forEach(j -> brief.addDemand(skills.get(j).atLevel(levels.get(j))));
    Optional<Plan> plan = piece.planner().tryPlan(brief.build());
    plan.ifPresent(this::addPlan);
    searches.add(new SearchResult(levels, plan.map(Plan::total).orElse(INFEASIBLE)));
  }
}
