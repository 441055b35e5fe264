package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.AllowPositions;
import fingering.demand.MeasureSpan;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.scoring.rules.StandardRules;
import fingering.search.Penalty;
import fingering.tables.Position;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The columns of a comparison are what they are called. */
class PlanComparerTest {
  private static final Scoring SCORING = StandardRules.commonPractice();

  private static PlanComparer comparer(Passage passage, Position... allowed) {
    return PlanComparer.of(passage, SCORING, LeftHand.MEDIUM, ImmutableSet.copyOf(allowed));
  }

  private static double share(Plan plan, Position position) {
    return (double) plan.notesByPosition().getOrDefault(position, 0) / plan.stoppedNotes();
  }

  private static List<String> positions(Plan plan) {
    return plan.notes().stream()
        .map(note -> note.open() ? "0" : note.placement().frame().position().toString())
        .toList();
  }

  private static Passage violaWith(String events) {
    return Music.viola().tempo("quarter=60").notes(events);
  }

  @ParameterizedTest
  @CsvSource({
    "violin, 3, G4/1 A4/1 B4/1 C5/1 D5/1 E5/1 F#5/1 G5/1 F#5/1 E5/1 D5/1 C5/1 B4/1 A4/1 G4/1",
    "violin, 3, C4/1 D4/1 Eb4/1 F4/1 G4/1 Ab4/1 Bb4/1 C5/1 D5/1 Eb5/1 F5/1 G5/1 Ab5/1 Bb5/1 C6/1",
    "viola, 3, C4/1 D4/1 E4/1 F4/1 G4/1 A4/1 B4/1 C5/1 D5/1 C5/1 B4/1 A4/1 G4/1 F4/1 E4/1 D4/1"
        + " C4/1",
    "viola, 3, F3/1 G3/1 A3/1 Bb3/1 C4/1 D4/1 E4/1 F4/1 G4/1 A4/1 Bb4/1 C5/1 D5/1 E5/1 F5/1 G5/1",
    "cello, 4, E4/1 F4/1 G4/1 F4/1 E4/1 C4/1 B3/1 A3/1 B3/1 C4/1 E4/1 F4/1 G4/1",
    "bass, 3, G2/1 A2/1 A2/1 G2/1 D2/1 E2/1 D2/1 C3/1 D3/1 C3/1"
  })
  void theUpperPlanStaysThereInMusicWithinReach(String instrument, int position, String events) {
    Passage passage = Music.on(instrument).tempo("quarter=96").notes(events);
    Plan plan = comparer(passage).upperPositionPlan().orElseThrow();
    assertThat(share(plan, Position.of(position))).isEqualTo(1);
    assertThat(plan.notesOutside()).isZero();
  }

  @Test
  void itLeavesForANoteOutOfReachAndComesBack() {
    Passage passage = violaWith("C4/1 D4/1 E4/1 D3/1 C4/1 E4/1 F4/1 G4/1");
    Plan plan = comparer(passage).upperPositionPlan().orElseThrow();
    assertThat(plan.notesOutside()).isEqualTo(1);
    assertThat(plan.notes().get(3).outside()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    // Two notes between two notes out of reach are not worth the shift.
    "quarter=60, D3/1 A3/1 B3/1 D3/1, 0",
    "quarter=60, D3/1 A3/1 B3/1 C4/1 D3/1, 3",
    // Nor are a few quick ones.
    "quarter=120, D3/.25 A3/.25 B3/.25 C4/.25 D3/.25, 0",
    // In two rests the hand has time to come and go, and in one it does not matter.
    "quarter=60, D3/1 r/1 A3/1 B3/1 r/1 D3/1, 2",
    "quarter=60, D3/1 r/1 A3/1 B3/1 D3/1, 0",
    // After a rest it is back, and before it it need not come back.
    "quarter=60, D3/1 A3/1 r/1 B3/1 C4/1 A3/1, 3",
    // In quick music the notes next to one out of reach may go with it.
    "quarter=120, A3/.5 B3/.5 C4/.5 B3/.5 A3/.5 F3/.5 D3/.5, 5",
  })
  void theNotesThatHaveToBeThereAreThoseWorthTheShift(String tempo, String middle, int counted) {
    Passage passage = Music.viola().tempo(tempo).notes(middle);
    Brief brief = Brief.mainlyIn("third", Position.THIRD);
    ImmutableList<ImmutableList<Grip>> grips = Planner.of(passage, SCORING).grips();
    GripSelection selection = GripSelection.of(brief, passage, grips);
    Penalty penalty = OutsidePositions.of(brief, passage.moments(), selection);
    long notes =
        IntStream.range(0, grips.size())
            .filter(m -> grips.get(m).stream().anyMatch(grip -> penalty.of(m, grip) > 0))
            .count();
    assertThat(notes).isEqualTo(counted);
  }

  @Test
  void openStringsCountForNeitherSide() {
    Passage passage = violaWith("C3/1 G3/1 C3/1 G3/1 C4/1 E4/1 C3/1 G3/1");
    Plan plan = comparer(passage).upperPositionPlan().orElseThrow();
    assertThat(plan.notesOutside()).isZero();
    assertThat(plan.notesByPosition().keySet()).containsOnly(Position.THIRD);
  }

  @Test
  void thereIsNoUpperPlanWhereNoNoteCanBePlayedThere() {
    Passage passage = violaWith("D3/1 C3/1 D3/1 C3/1");
    Comparison comparison = comparer(passage).comparePositions(false);
    assertThat(comparison.plans()).hasSize(1);
    assertThat(comparison.remarks())
        .contains("No fingering of this passage shows a stay in 3rd position.");
  }

  @Test
  void theRemarkNamesTheNotesOutOfReach() {
    Passage passage = violaWith("C4/1 D4/1 E4/1 D3/1 C4/1 E4/1 F4/1 G4/1");
    assertThat(comparer(passage).comparePositions(false).details())
        .contains(
            "'3rd position' leaves its position for 1 note, marked !: D3 in measure 1, beat 4 is"
                + " out of reach there.");
  }

  @Test
  void aPlanMostlyElsewhereSaysSo() {
    Passage passage = violaWith("D3/1 E3/1 D3/1 E3/1 D3/1 E3/1 D3/1 r/1 A3/1 B3/1 C4/1");
    assertThat(comparer(passage).comparePositions(false).remarks())
        .contains(
            "'3rd position' is there for fewer than half of its stopped notes: this music does not"
                + " lie in 3rd.");
  }

  /** Low music with one short high phrase: no column is named for a position it hardly uses. */
  @Test
  void aPlanWithFewNotesInTheUpperPositionIsLeftOutWithOneRemark() {
    Passage passage =
        Music.on("cello")
            .tempo("quarter=60")
            .notes("D2/1 E2/1 F2/1 E2/1 ".repeat(25) + "r/1 E4/1 F4/1 G4/1 F4/1 E4/1 r/1 D2/1");
    Comparison comparison = comparer(passage).comparePositions(false);
    assertThat(comparison.plans()).extracting(Plan::name).containsExactly("1st position");
    assertThat(comparison.remarks())
        .filteredOn(remark -> remark.contains("is left out"))
        .allMatch(
            remark -> remark.matches("'[^']+' is left out: only \\d+ of its \\d+ .*in 4th\\."))
        .hasSizeBetween(1, 2)
        .doesNotHaveDuplicates();
  }

  @Test
  void thePlanPartlyInThirdIsShownOnlyIfItDiffers() {
    Passage low =
        violaWith(
            "F3/1 E3/1 D3/1 E3/1 F3/1 E3/1 D3/1 C3/1 F3/1 E3/1 D3/1 E3/1 F3/1 E3/1 D3/1 C3/1 r/1"
                + " D5/1 E5/1 F5/1 G5/1 F5/1 E5/1 D5/1 E5/1 r/1 A3/1 B3/1 C4/1 A3/1 F3/1 A3/1");
    Comparison three = comparer(low).comparePositions(false);
    assertThat(three.plans())
        .extracting(Plan::name)
        .containsExactly("1st position", "3rd position", "partly 3rd");
    Plan partly = three.plans().get(2);
    assertThat(partly.total()).isLessThan(three.plans().get(1).total());
    assertThat(partly.notesByPosition().get(Position.THIRD)).isGreaterThanOrEqualTo(8);
    Passage high = violaWith("D5/1 E5/1 F5/1 G5/1 F5/1 E5/1 F5/1 G5/1 E5/1");
    PlanComparer comparer = comparer(high);
    assertThat(positions(comparer.partlyUpperPlan().orElseThrow()))
        .isEqualTo(positions(comparer.upperPositionPlan().orElseThrow()));
    assertThat(comparer.comparePositions(false).plans())
        .extracting(Plan::name)
        .containsExactly("1st position", "3rd position");
  }

  @Test
  void theUpperPlanKeepsToThePositionsAllowed() {
    Passage passage = violaWith("C4/1 D4/1 E4/1 D3/1 C4/1 E4/1 F4/1 G4/1");
    Passage inSecond = violaWith("E4/1 F4/1 G4/1 A4/1 B4/1 A4/1 G4/1 F4/1");
    Plan plan = comparer(inSecond, Position.SECOND).upperPositionPlan().orElseThrow();
    assertThat(plan.name()).isEqualTo("2nd position");
    assertThat(plan.notesByPosition().keySet()).containsOnly(Position.SECOND);
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> comparer(passage, Position.THIRD).upperPositionPlan())
        .withMessageContaining("D3 in measure 1, beat 4 cannot be played")
        .withMessageContaining("it is too low");
  }

  @Test
  void thereIsOnePlanIfOnlyFirstPositionIsAllowed() {
    Comparison comparison =
        comparer(violaWith("C4/1 D4/1 E4/1 F4/1"), Position.FIRST).comparePositions(false);
    assertThat(comparison.plans()).extracting(Plan::name).containsExactly("1st position");
    assertThat(comparison.plans().get(0).notesByPosition().keySet()).containsOnly(Position.FIRST);
    assertThat(comparison.remarks())
        .containsExactly(
            "No position above 1st is allowed, so there is no higher plan to compare.");
  }

  private static String refused(Passage passage, Position... positions) {
    Brief brief = Brief.within("first", ImmutableSet.copyOf(positions));
    try {
      Planner.of(passage, SCORING).plan(brief);
    } catch (InfeasibleBriefException e) {
      return e.getMessage();
    }
    return "";
  }

  @Test
  void allNotesThatPreventFirstPositionAreNamedWithAWayOut() {
    assertThat(refused(violaWith("C4/1 A5/1 C4/1 C6/1"), Position.FIRST))
        .isEqualTo(
            "2 notes or chords cannot be played in the positions allowed (1): A5 in measure 1, beat"
                + " 2, C6 in measure 1, beat 4 are too high; allow 5 too.");
    assertThat(refused(violaWith("C4/1 G5/1"), Position.FIRST))
        .startsWith(
            "G5 in measure 1, beat 2 cannot be played in the positions allowed (1): it is too high;"
                + " it can be played in position 2,");
    assertThat(refused(Music.violin().notes("G3+A3/1"), Position.FIRST)).isEmpty();
  }

  @Test
  void aDoubleStopWithoutAHandShapeIsNamed() {
    assertThat(refused(Music.violin().notes("A4/1 C4+C5/1 D5+B5/1 A5+E6/1"), Position.FIRST))
        .contains("no hand shape there holds the notes of C4+C5 in measure 1, beat 2")
        .contains("or divide the double stop");
  }

  @Test
  void demandsOfTheComparerApplyToTheUpperPlan() {
    Passage passage = violaWith("C4/1 D4/1 E4/1 F4/1 G4/1 A4/1 B4/1 C5/1");
    AllowPositions first =
        new AllowPositions(ImmutableSet.of(Position.FIRST), MeasureSpan.parse("1"));
    Plan plan =
        comparer(passage).withDemands(ImmutableList.of(first)).upperPositionPlan().orElseThrow();
    assertThat(positions(plan).subList(0, 4)).isSubsetOf("1", "0");
    assertThat(positions(plan).subList(4, 8)).isSubsetOf("3", "0");
  }
}
