package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.DemandParser;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.PrintedPosition;
import fingering.music.PrintedString.End;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words such as '3rd pos.' in plans that keep what is printed. */
class PrintedPositionPlansTest {
  private static final Brief KEEPING = Brief.free("kept").withKeepPrinted(true);

  /** The same music with words for a position over its notes from one on. */
  private static Passage named(Optional<Position> position, End end, Passage p, int from) {
    List<Note> held = p.notes().subList(from, p.notes().size());
    PrintedPosition asked =
        new PrintedPosition(
            position.map(one -> one.display() + " pos.").orElse("II"),
            position,
            held.get(0).place(),
            held.get(held.size() - 1).place(),
            end,
            held.stream().map(Note::address).collect(ImmutableSet.toImmutableSet()));
    return new Passage(
        p.title(),
        p.partId(),
        p.partName(),
        p.instrument(),
        p.tempi(),
        p.measures(),
        p.moments(),
        p.remarks(),
        ImmutableList.of(),
        ImmutableList.of(asked));
  }

  private static Passage third(Passage passage, int from) {
    return named(Optional.of(Position.THIRD), End.PART, passage, from);
  }

  private static Plan plan(Passage passage, Brief brief) {
    return Planner.of(passage, StandardRules.commonPractice()).plan(brief);
  }

  private static List<String> positions(Plan plan) {
    return plan.notes().stream().map(note -> note.position().toString()).toList();
  }

  private static final Passage LINE = Music.violin().notes("A4/1 B4/1 C5/1 D5/1 E5/1 D5/1");

  @Test
  void theHandIsInThePrintedPosition() {
    Plan plan = plan(third(LINE, 2), KEEPING);
    assertThat(positions(plan)).endsWith("3", "3", "3", "3");
    assertThat(PlanRemarks.of(plan))
        .containsExactly("'kept' keeps the printed positions: '3rd pos.' in m. 1–2 (to the end).");
    // Printed words do not affect other plans.
    Plan free = plan(third(LINE, 2), Brief.free("free"));
    assertThat(positions(free)).containsOnly("1");
    assertThat(PlanRemarks.of(free)).isEmpty();
  }

  // The plan is as cheap as the one with the same demand.
  @Test
  void printedWordsCostAsMuchAsTheSameDemand() {
    Brief asked =
        Brief.builder("asked").addDemand(DemandParser.of(LINE.instrument()).stay("3@1-2")).build();
    assertThat(plan(third(LINE, 0), KEEPING).total()).isEqualTo(plan(LINE, asked).total());
  }

  @Test
  void aNoteOutOfReachEndsTheWordsAndIsReported() {
    Plan plan = plan(third(Music.violin().notes("C5/1 D5/1 A3/1 B3/1 C4/1 D4/1"), 0), KEEPING);
    assertThat(positions(plan)).containsExactly("3", "3", "1", "1", "1", "1");
    assertThat(PlanRemarks.of(plan))
        .contains(
            "'kept' leaves the position of '3rd pos.' in m. 1–2 from A3 in measure 1, beat 3 on: out of reach there, or ruled out by a printed finger or by your demands.");
  }

  @Test
  void aLineContinuesAfterANoteOutOfReach() {
    Passage passage = Music.violin().notes("C5/1 A3/1 C5/1 D5/1");
    Plan plan = plan(named(Optional.of(Position.THIRD), End.LINE, passage, 0), KEEPING);
    assertThat(positions(plan)).startsWith("3").endsWith("3", "3");
    assertThat(positions(plan).get(1)).isNotEqualTo("3");
    assertThat(PlanRemarks.of(plan).get(1)).contains("for A3 in measure 1, beat 2:");
  }

  @Test
  void aPrintedFingerInAnotherPositionEndsTheWords() {
    Plan plan = plan(third(Music.violin().notes("C5/1 D5/1 B4/1@1$2 C5/1"), 0), KEEPING);
    assertThat(positions(plan)).startsWith("3", "3", "1");
    assertThat(plan.notes().get(2).finger()).isEqualTo("1");
  }

  @Test
  void demandsOverridePrintedWords() {
    Brief asked =
        KEEPING.toBuilder().addDemand(DemandParser.of(LINE.instrument()).allow("1")).build();
    assertThat(positions(plan(third(LINE, 2), asked))).containsOnly("1");
  }

  @Test
  void anAmbiguousNumeralIsIgnoredAndReported() {
    Plan plan = plan(named(Optional.empty(), End.PART, LINE, 2), KEEPING);
    assertThat(plan.total()).isEqualTo(plan(LINE, Brief.free("free")).total());
    assertThat(PlanRemarks.of(plan))
        .anyMatch(remark -> remark.startsWith("'II' in m. 1–2 may mean a string or a position"));
  }

  @Test
  void anUnplayablePrintedFingerIsReported() {
    Plan plan = plan(Music.violin().notes("A3/1@0 B3/1"), KEEPING);
    assertThat(PlanRemarks.of(plan))
        .containsExactly(
            "'kept' does not keep the printed finger or string of A3 in measure 1, beat 1: unplayable on this instrument, or ruled out by your demands.");
  }

  @Test
  void aPartWithoutPrintedFingeringsIsReported() {
    assertThat(PlanRemarks.of(plan(LINE, KEEPING)))
        .containsExactly(
            "No finger, string or position is printed in this music, so there is none to keep.");
  }
}
