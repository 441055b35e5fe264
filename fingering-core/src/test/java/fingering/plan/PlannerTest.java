package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.BeatUnit;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.builder.PassageBuilder;
import fingering.scoring.rules.StandardRules;
import fingering.search.BruteForce;
import fingering.search.RequiredStays;
import fingering.search.VisibleFingering;
import fingering.tables.FingeringException;
import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannerTest {
  private static final ImmutableSet<Position> FIRST = ImmutableSet.of(Position.FIRST);
  private static final ImmutableSet<Position> LOW = ImmutableSet.of(Position.HALF, Position.FIRST);

  private static Plan plan(Passage passage, Brief brief) {
    return Planner.of(passage, StandardRules.commonPractice()).plan(brief);
  }

  private static String fingers(Plan plan) {
    return plan.notes().stream().map(PlannedNote::finger).collect(Collectors.joining(" "));
  }

  private static List<Integer> strings(Plan plan) {
    return plan.notes().stream().map(note -> note.placement().string()).toList();
  }

  // first-position C major scale, common practice, no source
  @Test
  void theScaleOfCMajorOnTheViolaUsesOpenOneTwoThreeOnEachString() {
    Passage scale =
        Music.viola()
            .notes(
                "C3/1 D3/1 E3/1 F3/1 G3/1 A3/1 B3/1 C4/1 D4/1 E4/1 F4/1 G4/1 A4/1 B4/1 C5/1 D5/1");
    Plan plan = plan(scale, Brief.within("1st", FIRST));
    assertThat(fingers(plan)).isEqualTo("0 1 2 3 0 1 2 3 0 1 2 3 0 1 2 3");
    assertThat(strings(plan)).containsExactly(4, 4, 4, 4, 3, 3, 3, 3, 2, 2, 2, 2, 1, 1, 1, 1);
    assertThat(plan.shifts()).isZero();
    assertThat(plan.crossings()).isEqualTo(3);
    assertThat(plan.openStrings()).isEqualTo(4);
    assertThat(plan.fourthFingers()).isZero();
  }

  // G major scale in 1st position, the first scale of a violinist: common practice, no source
  @Test
  void theScaleOfGMajorOnTheViolinStaysInFirstByItself() {
    Passage scale =
        Music.violin().notes("G3/0.5 A3/0.5 B3/0.5 C4/0.5 D4/0.5 E4/0.5 F#4/0.5 G4/0.5");
    Plan plan = plan(scale, Brief.free("free"));
    assertThat(fingers(plan)).isEqualTo("0 1 2 3 0 1 2 3");
    assertThat(plan.highestPosition()).contains(Position.FIRST);
    assertThat(plan.notesByPosition()).containsExactly(java.util.Map.entry(Position.FIRST, 6));
  }

  // common practice, no source: half position for the chromatic start, 0-1-2-4 for F major on bass
  @Test
  void fMajorOnTheBassBeginsInHalfPosition() {
    Plan plan = plan(Music.on("bass").notes("E1/1 F1/1 G1/1 A1/1"), Brief.free("free"));
    assertThat(fingers(plan)).isEqualTo("0 1 4 0");
    assertThat(plan.notes().get(1).position()).isEqualTo(Position.HALF);
  }

  @Test
  void aNoteThatLeavesFirstPositionIsNamedWithItsMeasure() {
    Passage passage = Music.viola().tempo("quarter=40").notes("A4/1 B4/1 C5/1 D5/1 E5/1 C6/1 E5/2");
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(passage, Brief.within("low", LOW)))
        .withMessageContaining("C6")
        .withMessageContaining("measure 2, beat 2")
        .withMessageContaining("half, 1");
  }

  @Test
  void notesThatTheInstrumentDoesNotHaveAreLeftWithoutAFinger() {
    Plan plan = plan(Music.viola().notes("C3/4 B2/1 D3/1 C8/1 E3/1"), Brief.free("free"));

    assertThat(plan.notes())
        .extracting(note -> note.note().written().display())
        .containsExactly("C3", "D3", "E3");
    assertThat(plan.passage().unplayable())
        .extracting(note -> note.written().display())
        .containsExactly("B2", "C8");
    assertThat(plan.passage().moments()).extracting(Moment::restMicros).allMatch(rest -> rest >= 0);
    assertThat(plan.passage().remarks())
        .contains(
            "B2 in measure 2, beat 1 is below the lowest string of the viola (C3), and C8 in measure 2, beat 3 is beyond the fingerboard of the viola; they are left without a finger: check the notes, the instrument or the transposition");
  }

  @Test
  void aNoteOfAChordThatTheInstrumentDoesNotHaveIsLeftWithoutAFinger() {
    Plan plan = plan(Music.viola().notes("B2+D4/1 E4/1"), Brief.free("free"));

    assertThat(plan.notes()).hasSize(2);
    assertThat(plan.passage().unplayable()).hasSize(1);
  }

  @Test
  void musicWithoutAnyNoteOfTheInstrumentIsRefused() {
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(Music.viola().notes("B2/1 A2/1"), Brief.free("free")))
        .withMessageStartingWith("The viola cannot play B2 in measure 1, beat 1")
        .withMessageEndingWith("; check the part, the instrument or the transposition.");
  }

  @Test
  void aPartWithTheNameOfItsInstrumentIsNotNamedTwice() {
    Passage passage =
        PassageBuilder.of(Instruments.standard().named("viola")).note("B2", BeatUnit.WHOLE).build();
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(passage, Brief.free("free")))
        .withMessage(
            "The viola cannot play B2 in measure 1, beat 1: it is below the lowest string; check the"
                + " part, the instrument or the transposition.");
  }

  @Test
  void theNumberOfPlansIsChecked() {
    Planner planner = Planner.of(Music.viola().notes("D4/1"), StandardRules.commonPractice());
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> planner.plans(Brief.free("free"), 0))
        .withMessageStartingWith("0 plans cannot be made; ask for 1 to ");
  }

  @Test
  void onTheBassTheNoteIsNamedAsItIsWritten() {
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(Music.on("bass").notes("D1/1"), Brief.free("free")))
        .withMessageContaining("D2");
  }

  @Test
  void theNotesThatLeaveFirstPositionAreMarkedAndTheOthersStay() {
    Passage passage = Music.viola().tempo("quarter=40").notes("A4/1 B4/1 C5/1 D5/1 E5/1 C6/1 E5/2");
    Plan plan = plan(passage, Brief.preferring("low", LOW));
    assertThat(plan.notesOutside()).isEqualTo(1);
    assertThat(plan.notes().stream().map(PlannedNote::outside).toList())
        .containsExactly(false, false, false, false, false, true, false);
  }

  // common practice, no source: a player who moves up for one note of a fast run stays there for
  // its
  // neighbours, but not beyond a rest
  @Test
  void notesCloseToOneOutOfReachMayBePlayedInItsPosition() {
    Passage leaps = Music.viola().notes("A4/1 A4/1 C5/.25 A5/.25 C5/.25 A5/.25 r/1 A4/1 C5/1");
    Plan plan = plan(leaps, Brief.preferring("low", LOW));
    assertThat(plan.notes().stream().map(PlannedNote::outside).toList())
        .containsExactly(false, false, true, true, true, true, false, false);
    assertThat(plan.shifts()).isLessThanOrEqualTo(2);
  }

  @Test
  void printedFingeringsAndStringsAreKept() {
    Passage passage = Music.viola().notes("A3/1 D4/1@4 E4/1 G4/1@1$2 A4/1@4$2 A4/1$2");
    Plan kept = plan(passage, Brief.free("printed").withKeepPrinted(true));
    assertThat(kept.notes().get(1).finger()).isEqualTo("4");
    assertThat(kept.notes().get(3).finger()).isEqualTo("1");
    assertThat(kept.notes().get(4).finger()).isEqualTo("4");
    assertThat(strings(kept).subList(3, 6)).containsExactly(2, 2, 2);
    Plan free = plan(passage, Brief.free("free"));
    assertThat(free.total()).isLessThan(kept.total());
  }

  @Test
  void aPrintedFingerThatCannotPlayTheNoteIsIgnored() {
    Passage passage = Music.viola().notes("C3/1@3 D3/1");
    Plan kept = plan(passage, Brief.free("printed").withKeepPrinted(true));
    assertThat(kept.notes().get(0).finger()).isEqualTo("0");
  }

  @ParameterizedTest
  @CsvSource({"2nd, 2", "3rd, 2", "3rd, 4", "5th, 3"})
  void aPlanThatMustShowAStayShowsIt(String name, int notes) {
    Position position = Position.parse(name);
    Passage passage =
        Music.violin().notes("B4/1 C5/1 D5/1 E5/1 F5/1 E5/1 F5/1 G5/1 A5/1 B5/1 C6/1 D6/1");
    Plan plan = plan(passage, Brief.free(name).withRequirement(RequiredStays.in(position, notes)));
    assertThat(BruteForce.stays(plan.grips(), position, notes)).isTrue();
    assertThat(plan.total()).isGreaterThanOrEqualTo(plan(passage, Brief.free("free")).total());
  }

  @Test
  void aStayLongerThanThePassageIsRefusedByTheNameOfThePlan() {
    Passage passage = Music.violin().notes("B4/1 C5/1 D5/1");
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(
            () ->
                plan(
                    passage,
                    Brief.free("third").withRequirement(RequiredStays.in(Position.THIRD, 4))))
        .withMessageContaining("'third'");
  }

  @ParameterizedTest
  @CsvSource({
    "viola, D3*4+B3/1 C4/1 B3/1 C4/1 D4/1",
    "viola, E4*3+C5/1 B4/1 C5/1 D5/1",
    "violin, A3*3+F4/1 G4/1 F4/1 E4/1",
    "violin, B4*2+G5/1 A5/1 G5/1"
  })
  void aHeldNoteKeepsItsStringAndFinger(String instrument, String events) {
    Passage passage = Music.on(instrument).notes(events);
    Plan plan = plan(passage, Brief.free("free"));
    int held = 0;
    for (int m = 1; m < plan.grips().size(); m++) {
      for (Note note : passage.moments().get(m).held()) {
        Placement before = placement(passage, plan.grips(), m - 1, note);
        Placement now = placement(passage, plan.grips(), m, note);
        assertThat(now.string()).isEqualTo(before.string());
        assertThat(now.finger()).isEqualTo(before.finger());
        held++;
      }
    }
    assertThat(held).isPositive();
  }

  private static Placement placement(
      Passage passage, ImmutableList<Grip> grips, int moment, Note note) {
    int index = passage.moments().get(moment).sounding().indexOf(note);
    return grips.get(moment).placements().get(index);
  }

  @Test
  void aChordHasOneShiftAndOneCrossingAndItsLowestNoteFirst() {
    Passage passage = Music.viola().notes("B4/1 E3+C4/1");
    Plan plan = plan(passage, Brief.free("free"));
    assertThat(plan.notes()).extracting(note -> note.note().midi()).containsExactly(71, 52, 60);
    assertThat(plan.crossings()).isEqualTo(1);
    assertThat(plan.notes().get(2).crossing()).isZero();
  }

  @Test
  void theHardestMeasuresAreSortedByCost() {
    Passage passage = Music.violin().notes("A4/4 B4/4 B4/0.25 B6/0.25 G3/0.25 B6/0.25 r/3 A4/4");
    Plan plan = plan(passage, Brief.free("free"));
    var hardest = plan.hardestMeasures(2);
    assertThat(hardest.get(0).measure()).isEqualTo("3");
    assertThat(hardest.get(0).cost()).isGreaterThan(hardest.get(1).cost());
    assertThat(plan.chargesAt(3)).isNotEmpty().allMatch(charge -> charge.moment() == 3);
  }

  @Test
  void threeSingleNotesOutsideAreFewerThanTwoDoubleStops() {
    Passage passage = Music.viola().notes("D5/1 E5/1 D5/1 r/1 C4+G4/1 D4+A4/1 C4+G4/1");
    Brief low = Brief.preferring("low", LOW).withRequirement(RequiredStays.in(Position.THIRD, 3));
    assertThat(plan(passage, low).notesOutside()).isEqualTo(3);
  }

  private static ImmutableList<Plan> plans(Passage passage, Brief brief, int k) {
    return Planner.of(passage, StandardRules.commonPractice()).plans(brief, k);
  }

  @Test
  void theFirstOfSeveralPlansIsTheBestPlan() {
    Passage passage = Music.viola().notes("C4/1 D4/1 E4/1 F4/1 G4/1 A4/1 B4/1 C5/1");
    Brief brief = Brief.preferring("low", LOW).withRequirement(RequiredStays.in(Position.THIRD, 2));
    assertThat(plans(passage, brief, 6)).hasSize(6).startsWith(plan(passage, brief));
  }

  // A major scale in 1st position, open string or fourth finger: common practice, no source
  @Test
  void theTwoBestScalesOfAMajorDifferInTheFourthFingerForTheOpenString() {
    Passage scale = Music.violin().notes("A4/1 B4/1 C#5/1 D5/1 E5/1 F#5/1 G#5/1 A5/1 B5/1");
    assertThat(plans(scale, Brief.free("free"), 2))
        .extracting(PlannerTest::fingers)
        .containsExactlyInAnyOrder("0 1 2 3 0 1 2 3 4", "0 1 2 3 4 1 2 3 4");
  }

  @Test
  void thereAreNoMorePlansThanFingerings() {
    assertThat(plans(Music.violin().notes("G3/1 D4/1"), Brief.within("1st", FIRST), 50))
        .extracting(PlannerTest::fingers)
        .containsExactlyInAnyOrder("0 0", "0 4");
  }

  @Test
  void plansThatDifferInPlacesDifferInAStringOrPosition() {
    Passage passage = Music.viola().notes("D3*4+B3/1 C4/1 B3/1 C4/1 D4/1 E4/1 F4/1");
    Planner planner = Planner.of(passage, StandardRules.commonPractice());
    ImmutableList<Plan> plans =
        planner.plans(Brief.free("free"), 10, VisibleFingering.Grain.PLACES);
    assertThat(plans).hasSize(10).startsWith(plan(passage, Brief.free("free")));
    assertThat(plans)
        .extracting(
            plan ->
                plan.notes().stream()
                    .map(n -> n.placement().string() + (n.open() ? " open" : " " + n.position()))
                    .toList())
        .doesNotHaveDuplicates();
    assertThat(plans).extracting(Plan::total).isSorted();
  }

  @Test
  void severalPlansOfAnInfeasibleBriefAreRefusedByItsName() {
    Passage passage = Music.violin().notes("B4/1 C5/1 D5/1");
    Brief brief = Brief.free("third").withRequirement(RequiredStays.in(Position.THIRD, 4));
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plans(passage, brief, 3))
        .withMessageContaining("'third'");
  }

  @Test
  void printedFingeringsAreKeptInEveryOneOfThePlans() {
    Passage passage = Music.viola().notes("A3/1 D4/1@4 E4/1 G4/1@1$2 A4/1@4$2 A4/1$2");
    assertThat(plans(passage, Brief.free("printed").withKeepPrinted(true), 8))
        .hasSize(8)
        .allSatisfy(
            plan -> {
              assertThat(plan.notes().get(1).finger()).isEqualTo("4");
              assertThat(plan.notes().get(3).finger()).isEqualTo("1");
              assertThat(strings(plan).subList(3, 6)).containsExactly(2, 2, 2);
            });
  }
}
