package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.PieceCosts.KnownPlan;
import fingering.demand.Skill;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * Plans a set of pieces that together have to show some skills, at the least total cost. It finds
 * the cheapest distribution of the required amounts over the pieces, and for each piece the
 * cheapest plan that shows its share.
 */
public final class AuditionPlanner {
  private final ImmutableList<PieceCosts> pieces;
  private final ImmutableList<LeveledSkill> skills;

  private AuditionPlanner(ImmutableList<AuditionPiece> pieces, ImmutableList<LeveledSkill> skills) {
    this.skills = skills;
    this.pieces =
        pieces.stream()
            .map(piece -> new PieceCosts(piece, skills))
            .collect(ImmutableList.toImmutableList());
  }

  /**
   * Plans an audition. If not all skills can be shown together, a skill is shown if that is
   * possible together with the earlier ones that are shown.
   *
   * @param pieces the pieces, at least one
   * @param required the skills that they have to show together
   * @param inOnePiece whether one piece has to show the whole of each skill; otherwise the amounts
   *     of the pieces are added, except for stays
   * @throws FingeringException if there is no piece, or the required skills have too many
   *     combinations of amounts for the search
   */
  public static Audition plan(
      ImmutableList<AuditionPiece> pieces, ImmutableList<Skill> required, boolean inOnePiece) {
    if (pieces.isEmpty()) {
      throw new FingeringException("there is no piece to plan; name an excerpt or a scale");
    }
    return new AuditionPlanner(
            pieces,
            required.stream()
                .map(skill -> LeveledSkill.of(skill, inOnePiece))
                .collect(ImmutableList.toImmutableList()))
        .plan();
  }

  private Audition plan() {
    List<Integer> targets = new ArrayList<>(skills.stream().map(LeveledSkill::target).toList());
    AuditionSolver solver = solver(targets);
    // Computed first, because the solver reuses the results of these searches.
    ImmutableList<ImmutableList<MarginalCost>> marginalCosts =
        IntStream.range(0, skills.size())
            .mapToObj(this::marginalCosts)
            .collect(ImmutableList.toImmutableList());
    Optional<ImmutableList<KnownPlan>> plans = solver.solve();
    if (plans.isEmpty()) {
      plans = solveGreedily(targets);
    }
    return audition(plans.orElseThrow(), marginalCosts);
  }

  private AuditionSolver solver(List<Integer> targets) {
    return new AuditionSolver(pieces, ImmutableList.copyOf(targets));
  }

  /** Adds one skill after the other, if it can be shown together with those added before. */
  private Optional<ImmutableList<KnownPlan>> solveGreedily(List<Integer> targets) {
    for (int j = 0; j < targets.size(); j++) {
      targets.set(j, 0);
    }
    Optional<ImmutableList<KnownPlan>> plans = solver(targets).solve();
    for (int j = 0; j < targets.size(); j++) {
      targets.set(j, skills.get(j).target());
      Optional<ImmutableList<KnownPlan>> more = solver(targets).solve();
      if (more.isPresent()) {
        plans = more;
      } else {
        targets.set(j, 0);
      }
    }
    return plans;
  }

  /** The pieces that can show the missing amount of a skill by themselves, cheapest first. */
  private ImmutableList<MarginalCost> marginalCosts(int skill) {
    int target = skills.get(skill).target();
    int reached = pieces.stream().mapToInt(piece -> piece.levelOfCheapest(skill)).sum();
    if (reached >= target) {
      return ImmutableList.of();
    }
    List<MarginalCost> costs = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).piece().counts()) {
        marginalCost(i, skill, target - reached).ifPresent(costs::add);
      }
    }
    return costs.stream()
        .sorted(Comparator.comparingLong(MarginalCost::extraCost))
        .collect(ImmutableList.toImmutableList());
  }

  private Optional<MarginalCost> marginalCost(int index, int skill, int missing) {
    PieceCosts piece = pieces.get(index);
    int reached = piece.levelOfCheapest(skill);
    // The cost of one more level is a lower bound for all further levels.
    piece.search(piece.only(skill, reached + 1));
    ImmutableList<Integer> levels = piece.only(skill, reached + missing);
    piece.search(levels);
    return piece
        .best(levels)
        .map(KnownPlan::plan)
        .map(
            plan ->
                new MarginalCost(
                    index,
                    RequiredSkill.amount(skills.get(skill).skill(), plan),
                    plan.total() - piece.piece().cheapest().total(),
                    plan));
  }

  private Audition audition(
      ImmutableList<KnownPlan> plans, ImmutableList<ImmutableList<MarginalCost>> marginalCosts) {
    ImmutableList.Builder<PlannedPiece> planned = ImmutableList.builder();
    for (int i = 0; i < pieces.size(); i++) {
      planned.add(new PlannedPiece(pieces.get(i).piece(), plans.get(i).plan()));
    }
    ImmutableList<PlannedPiece> all = planned.build();
    ImmutableList.Builder<RequiredSkill> required = ImmutableList.builder();
    for (int j = 0; j < skills.size(); j++) {
      LeveledSkill skill = skills.get(j);
      int index = j;
      int reached = plans.stream().mapToInt(one -> one.levels().get(index)).sum();
      required.add(
          new RequiredSkill(
              skill.skill(),
              skill.inOnePiece(),
              amounts(all, one -> RequiredSkill.amount(skill.skill(), one.piece().cheapest())),
              amounts(all, one -> RequiredSkill.amount(skill.skill(), one.plan())),
              marginalCosts.get(j),
              reached >= skill.target()));
    }
    return new Audition(all, required.build());
  }

  private static ImmutableList<Integer> amounts(
      ImmutableList<PlannedPiece> pieces, ToIntFunction<PlannedPiece> amount) {
    return pieces.stream()
        .map(one -> one.piece().counts() ? amount.applyAsInt(one) : 0)
        .collect(ImmutableList.toImmutableList());
  }
}
