package fingering.audition;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.demand.ShowPosition;
import fingering.demand.ShowShift;
import fingering.demand.ShowStay;
import fingering.demand.ShowTechnique;
import fingering.demand.Skill;
import fingering.demand.Technique;
import fingering.fingerboard.LeftHand;
import fingering.music.Music;
import fingering.music.RandomMusic;
import fingering.plan.Brief;
import fingering.plan.Planner;
import fingering.plan.PlannerFactory;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/**
 * Compares the distribution over the pieces with all others: each piece is planned for every amount
 * of every skill, and all sums are tried.
 */
class AuditionOptimumTest {
  static final ImmutableList<Skill> HIGH =
      ImmutableList.of(new ShowPosition(Position.SECOND, 3), new ShowPosition(Position.THIRD, 4));

  private static final ImmutableList<Skill> MIXED =
      ImmutableList.of(
          new ShowPosition(Position.THIRD, 3),
          new ShowStay(Position.SECOND, 1),
          new ShowShift(Optional.of(ShowShift.Direction.UP), Optional.empty(), 2),
          new ShowTechnique(Technique.FOURTH_FINGER));

  static ImmutableList<AuditionPiece> pieces(int seed, int count, int notes) {
    PlannerFactory planners = new PlannerFactory(StandardRules.commonPractice(), LeftHand.MEDIUM);
    RandomMusic random = new RandomMusic(seed);
    ImmutableList.Builder<AuditionPiece> pieces = ImmutableList.builder();
    for (int i = 0; i < count; i++) {
      Planner planner =
          planners.of(Music.viola().meter(2, 4).notes(random.line(notes, 50, 76))); // D3 to E5
      pieces.add(AuditionPiece.of("piece " + i, planner, Brief.free("free"), true));
    }
    return pieces.build();
  }

  /** Every combination of amounts of skills: none, a part if parts are added, or all. */
  private static List<List<Integer>> amounts(List<Skill> skills, boolean inOnePiece) {
    List<List<Integer>> all = List.of(List.of());
    for (Skill skill : skills) {
      boolean whole = inOnePiece || skill instanceof ShowStay;
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> before : all) {
        for (int k = 0; k <= skill.amount(); k += whole ? skill.amount() : 1) {
          List<Integer> one = new ArrayList<>(before);
          one.add(k);
          longer.add(one);
        }
      }
      all = longer;
    }
    return all;
  }

  private static OptionalLong extra(
      AuditionPiece piece, List<Skill> skills, List<Integer> amounts) {
    Brief.Builder brief = Brief.builder("some");
    for (int j = 0; j < skills.size(); j++) {
      if (amounts.get(j) > 0) {
        brief.addDemand(skills.get(j).withAmount(amounts.get(j)));
      }
    }
    return piece
        .planner()
        .tryPlan(brief.build())
        .map(plan -> OptionalLong.of(plan.total() - piece.cheapest().total()))
        .orElse(OptionalLong.empty());
  }

  /** The least extra cost of all pieces together, over every assignment. */
  private static OptionalLong least(
      List<AuditionPiece> pieces, List<Skill> skills, boolean inOnePiece, List<Integer> left) {
    if (pieces.isEmpty()) {
      return left.stream().allMatch(rest -> rest <= 0) ? OptionalLong.of(0) : OptionalLong.empty();
    }
    OptionalLong best = OptionalLong.empty();
    for (List<Integer> amounts : amounts(skills, inOnePiece)) {
      OptionalLong own = extra(pieces.get(0), skills, amounts);
      if (own.isPresent()) {
        List<Integer> then = new ArrayList<>();
        for (int j = 0; j < skills.size(); j++) {
          then.add(left.get(j) - amounts.get(j));
        }
        OptionalLong others = least(pieces.subList(1, pieces.size()), skills, inOnePiece, then);
        if (others.isPresent()) {
          long sum = own.getAsLong() + others.getAsLong();
          best = OptionalLong.of(Math.min(sum, best.orElse(sum)));
        }
      }
    }
    return best;
  }

  private static void assertLeast(
      List<AuditionPiece> pieces, List<Skill> skills, boolean inOnePiece) {
    Audition audition =
        AuditionPlanner.plan(
            ImmutableList.copyOf(pieces), ImmutableList.copyOf(skills), inOnePiece);
    OptionalLong least =
        least(pieces, skills, inOnePiece, skills.stream().map(Skill::amount).toList());
    assertThat(audition.met()).isEqualTo(least.isPresent());
    if (least.isPresent()) {
      assertThat(audition.extraCost()).isEqualTo(least.getAsLong());
    }
    for (RequiredSkill skill : audition.skills()) {
      assertThat(skill.met()).isEqualTo(skill.amountShown() >= skill.skill().amount());
    }
  }

  @Property(tries = 12)
  void positionsAreDistributedOverPiecesAtTheLeastCost(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 2) int pieces) {
    assertLeast(pieces(seed, pieces, 9), HIGH, false);
  }

  @Property(tries = 12)
  void positionsInOnePieceEachAreAssignedAtTheLeastCost(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 3) int pieces) {
    assertLeast(pieces(seed, pieces, 9), HIGH, true);
  }

  @Property(tries = 10)
  void staysShiftsAndFingersAreDistributedAtTheLeastCost(@ForAll int seed) {
    assertLeast(pieces(seed, 2, 7), MIXED, false);
  }
}
