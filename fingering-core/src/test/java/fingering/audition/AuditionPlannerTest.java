package fingering.audition;

import static fingering.audition.AuditionOptimumTest.HIGH;
import static fingering.audition.AuditionOptimumTest.pieces;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.demand.ShowPosition;
import fingering.demand.Skill;
import fingering.music.Music;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.List;
import org.junit.jupiter.api.Test;

class AuditionPlannerTest {
  @Test
  void amountsShownAreTheStoppedNotesOfThePlans() {
    ImmutableList<AuditionPiece> pieces = pieces(7, 3, 16);
    Audition audition = AuditionPlanner.plan(pieces, HIGH, false);
    for (int i = 0; i < pieces.size(); i++) {
      Plan plan = audition.pieces().get(i).plan();
      assertThat(audition.skills().get(1).shown().get(i))
          .isEqualTo(plan.notesByPosition().getOrDefault(Position.THIRD, 0));
    }
  }

  @Test
  void skillsInTheCheapestPlansChangeNoPlan() {
    Planner planner =
        Planner.of(Music.viola().notes("D4/1 E4/1 F4/1 G4/1"), StandardRules.commonPractice());
    AuditionPiece piece = AuditionPiece.of("low", planner, Brief.free("free"), true);
    Audition audition =
        AuditionPlanner.plan(
            ImmutableList.of(piece, piece),
            ImmutableList.of(new ShowPosition(Position.FIRST, 5)),
            false);
    assertThat(audition.extraCost()).isZero();
    assertThat(audition.skills().get(0).marginalCosts()).isEmpty();
    assertThat(audition.pieces()).allMatch(one -> one.plan().equals(piece.cheapest()));
  }

  @Test
  void aSkillThatNoPieceCanShowIsDroppedAndTheRestIsShown() {
    Planner planner = Planner.of(Music.viola().notes("F4/1 G4/1"), StandardRules.commonPractice());
    AuditionPiece piece = AuditionPiece.of("short", planner, Brief.free("free"), true);
    Audition audition =
        AuditionPlanner.plan(
            ImmutableList.of(piece),
            ImmutableList.of(
                new ShowPosition(Position.THIRD, 3), new ShowPosition(Position.SECOND, 2)),
            false);
    assertThat(audition.skills()).extracting(RequiredSkill::met).containsExactly(false, true);
    assertThat(audition.skills().get(0).marginalCosts()).isEmpty();
  }

  @Test
  void aPieceThatDoesNotCountKeepsItsCheapestPlan() {
    ImmutableList<AuditionPiece> both = pieces(11, 2, 16);
    AuditionPiece silent =
        new AuditionPiece("scale", both.get(0).planner(), both.get(0).cheapest(), false);
    Audition audition = AuditionPlanner.plan(ImmutableList.of(silent, both.get(1)), HIGH, false);
    assertThat(audition.pieces().get(0).plan()).isEqualTo(silent.cheapest());
    assertThat(audition.skills()).allMatch(skill -> skill.shown().get(0) == 0);
    assertThat(audition.skills())
        .allMatch(skill -> skill.marginalCosts().stream().allMatch(cost -> cost.piece() == 1));
  }

  @Test
  void aMarginalCostIsThatOfShowingTheMissingAmountInOnePiece() {
    ImmutableList<AuditionPiece> pieces = pieces(3, 3, 20);
    Audition audition = AuditionPlanner.plan(pieces, HIGH, false);
    for (RequiredSkill skill : audition.skills()) {
      for (MarginalCost cost : skill.marginalCosts()) {
        int others = skill.amountInCheapest() - skill.cheapest().get(cost.piece());
        Position position = ((ShowPosition) skill.skill()).position();
        assertThat(others + cost.plan().notesByPosition().getOrDefault(position, 0))
            .isGreaterThanOrEqualTo(skill.skill().amount());
        assertThat(cost.amount())
            .isEqualTo(cost.plan().notesByPosition().getOrDefault(position, 0));
      }
    }
    assertThat(audition.skills()).anyMatch(skill -> !skill.marginalCosts().isEmpty());
  }

  @Test
  void tooManyCombinationsAreRefused() {
    ImmutableList.Builder<Skill> much = ImmutableList.builder();
    for (String position : List.of("1", "2", "3", "4")) {
      much.add(new ShowPosition(Position.parse(position), 50));
    }
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> AuditionPlanner.plan(pieces(1, 1, 4), much.build(), false))
        .withMessageContaining("ask for fewer notes or fewer skills");
  }
}
