package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.PieceCosts.Known;
import fingering.demand.Skill;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * Plans a set of pieces so that together they show what is asked for, at the least points above the
 * pieces' own cheapest plans, all pieces added up. Of all ways to share out among the pieces what
 * has to be shown it is the cheapest, and in each piece the cheapest plan that shows its share.
 */
public final class AuditionPlanner {
  private final ImmutableList<PieceCosts> pieces;
  private final ImmutableList<SkillScale> steps;

  private AuditionPlanner(ImmutableList<AuditionPiece> pieces, ImmutableList<SkillScale> steps) {
    this.steps = steps;
    this.pieces =
        pieces.stream()
            .map(piece -> new PieceCosts(piece, steps))
            .collect(ImmutableList.toImmutableList());
  }

  /**
   * Plans an audition. Where not everything can be shown, each skill is shown that can be together
   * with those before it.
   *
   * @param pieces the pieces
   * @param asked what they have to show together
   * @param inOnePiece whether each skill has to be shown whole in one piece, as stays always are;
   *     otherwise what the pieces show is added up
   * @throws FingeringException if there is no piece, or so much is asked for that the search cannot
   *     carry it
   */
  public static Audition plan(
      ImmutableList<AuditionPiece> pieces, ImmutableList<Skill> asked, boolean inOnePiece) {
    if (pieces.isEmpty()) {
      throw new FingeringException("there is no piece to plan; name an excerpt or a scale");
    }
    return new AuditionPlanner(
            pieces,
            asked.stream()
                .map(skill -> SkillScale.of(skill, inOnePiece))
                .collect(ImmutableList.toImmutableList()))
        .plan();
  }

  private Audition plan() {
    List<Integer> tops = new ArrayList<>(steps.stream().map(SkillScale::top).toList());
    AuditionSolver all = solver(tops);
    // Before all are planned together, since what is found here is of use to that.
    ImmutableList<ImmutableList<MarginalCost>> offers =
        IntStream.range(0, steps.size())
            .mapToObj(this::offers)
            .collect(ImmutableList.toImmutableList());
    Optional<ImmutableList<Known>> plans = all.solve();
    if (plans.isEmpty()) {
      plans = most(tops);
    }
    return audition(plans.orElseThrow(), offers);
  }

  private AuditionSolver solver(List<Integer> tops) {
    return new AuditionSolver(pieces, ImmutableList.copyOf(tops));
  }

  /** Shows one skill after the other, as far as each can be shown with those before it. */
  private Optional<ImmutableList<Known>> most(List<Integer> tops) {
    for (int j = 0; j < tops.size(); j++) {
      tops.set(j, 0);
    }
    Optional<ImmutableList<Known>> plans = solver(tops).solve();
    for (int j = 0; j < tops.size(); j++) {
      tops.set(j, steps.get(j).top());
      Optional<ImmutableList<Known>> more = solver(tops).solve();
      if (more.isPresent()) {
        plans = more;
      } else {
        tops.set(j, 0);
      }
    }
    return plans;
  }

  /** The pieces that can make up what is short of a skill, each by itself. */
  private ImmutableList<MarginalCost> offers(int skill) {
    SkillScale step = steps.get(skill);
    int freely = pieces.stream().mapToInt(piece -> piece.reachedFreely(skill)).sum();
    if (freely >= step.top()) {
      return ImmutableList.of();
    }
    List<MarginalCost> offers = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).piece().shows()) {
        offer(i, skill, step.top() - freely).ifPresent(offers::add);
      }
    }
    return offers.stream()
        .sorted(Comparator.comparingLong(MarginalCost::extra))
        .collect(ImmutableList.toImmutableList());
  }

  private Optional<MarginalCost> offer(int index, int skill, int missing) {
    PieceCosts piece = pieces.get(index);
    int freely = piece.reachedFreely(skill);
    // What the first of it costs is a bound for every smaller part of it.
    piece.settle(piece.alone(skill, freely + 1));
    ImmutableList<Integer> wanted = piece.alone(skill, freely + missing);
    piece.settle(wanted);
    return piece
        .best(wanted)
        .map(Known::plan)
        .map(
            plan ->
                new MarginalCost(
                    index,
                    RequiredSkill.amount(steps.get(skill).skill(), plan),
                    plan.total() - piece.piece().free().total(),
                    plan));
  }

  private Audition audition(
      ImmutableList<Known> plans, ImmutableList<ImmutableList<MarginalCost>> offers) {
    ImmutableList.Builder<PlannedPiece> planned = ImmutableList.builder();
    for (int i = 0; i < pieces.size(); i++) {
      planned.add(new PlannedPiece(pieces.get(i).piece(), plans.get(i).plan()));
    }
    ImmutableList<PlannedPiece> all = planned.build();
    ImmutableList.Builder<RequiredSkill> skills = ImmutableList.builder();
    for (int j = 0; j < steps.size(); j++) {
      SkillScale step = steps.get(j);
      int skill = j;
      int reached = plans.stream().mapToInt(one -> one.reached().get(skill)).sum();
      skills.add(
          new RequiredSkill(
              step.skill(),
              step.whole(),
              amounts(all, one -> RequiredSkill.amount(step.skill(), one.piece().free())),
              amounts(all, one -> RequiredSkill.amount(step.skill(), one.plan())),
              offers.get(j),
              reached >= step.top()));
    }
    return new Audition(all, skills.build());
  }

  private static ImmutableList<Integer> amounts(
      ImmutableList<PlannedPiece> pieces, ToIntFunction<PlannedPiece> amount) {
    return pieces.stream()
        .map(one -> one.piece().shows() ? amount.applyAsInt(one) : 0)
        .collect(ImmutableList.toImmutableList());
  }
}
