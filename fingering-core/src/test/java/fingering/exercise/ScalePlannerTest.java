package fingering.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.collect.ImmutableSet;
import fingering.demand.DemandParser;
import fingering.fingerboard.LeftHand;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScalePlannerTest {

  private static PlannedScale planned(
      String instrument, ScaleRequest request, Optional<String> from, Brief brief) {
    Instrument played = Instruments.standard().named(instrument);
    return ScalePlanner.plan(
        request,
        played,
        LeftHand.MEDIUM,
        from.map(request.scale()::start),
        passage -> Planner.of(passage, StandardRules.commonPractice()).plan(brief));
  }

  private static PlannedScale planned(String instrument, String scale, int octaves) {
    return planned(instrument, request(scale, octaves), Optional.empty(), Brief.free("free"));
  }

  private static ScaleRequest request(String scale, int octaves) {
    return ScaleRequest.of(Scale.parse(scale), octaves);
  }

  private static Brief in(Position... positions) {
    return Brief.within("positions", ImmutableSet.copyOf(positions));
  }

  // from the open strings: S. Adler, The Study of Orchestration, from memory; as written
  @ParameterizedTest
  @CsvSource({
    "violin, G major, G3",
    "violin, F# major, F#4",
    "viola, C major, C3",
    "viola, B major, B3",
    "cello, C major, C2",
    "cello, Bb major, Bb2",
    "bass, E major, E2",
    "bass, Eb major, Eb3"
  })
  void scaleStartsOnTheLowestTonicOfTheInstrument(String instrument, String scale, String from) {
    assertThat(planned(instrument, scale, 1).exercise().from()).isEqualTo(Pitch.parse(from));
  }

  // In 3rd position the first finger plays the third letter above the open string: any method for
  // viola; common practice, no source.
  @ParameterizedTest
  @CsvSource({"F major, 2, F3", "G major, 2, G3", "D major, 1, D4", "E major, 1, E4"})
  void scaleInOnePositionStartsOnTheLowestTonicThere(String scale, int octaves, String from) {
    PlannedScale planned =
        planned("viola", request(scale, octaves), Optional.empty(), in(Position.THIRD));

    assertThat(planned.exercise().from()).isEqualTo(Pitch.parse(from));
    assertThat(planned.plan().shifts()).isZero();
    assertThat(planned.plan().notesByPosition().keySet()).containsExactly(Position.THIRD);
  }

  @Test
  void scaleOnOneStringStartsOnTheLowestTonicOfTheString() {
    Instrument violin = Instruments.standard().named("violin");
    Brief brief = Brief.builder("sul A").addDemand(DemandParser.of(violin).strings("A")).build();
    PlannedScale planned = planned("violin", request("Bb major", 1), Optional.empty(), brief);

    assertThat(planned.exercise().from()).isEqualTo(Pitch.parse("Bb4"));
    assertThat(planned.plan().notes()).allMatch(note -> note.placement().string() == 2);
  }

  @Test
  void scaleStartsOnTheRequestedTonic() {
    PlannedScale planned =
        planned("viola", request("C major", 2), Optional.of("4"), Brief.free("free"));

    assertThat(planned.exercise().from()).isEqualTo(Pitch.parse("C4"));
    assertThat(planned.exercise().top()).isEqualTo(Pitch.parse("C6"));
  }

  // common practice, no source: two octaves from the lowest string are in 1st position
  @ParameterizedTest
  @CsvSource({
    "violin, G major",
    "violin, A major",
    "violin, Ab major",
    "violin, Bb major",
    "violin, G melodic minor",
    "violin, A melodic minor",
    "violin, G harmonic minor",
    "viola, C major",
    "viola, D major",
    "viola, Eb major",
    "viola, C melodic minor",
    "viola, D melodic minor"
  })
  void scaleOfTwoOctavesStaysInFirstPosition(String instrument, String scale) {
    Plan plan = planned(instrument, scale, 2).plan();

    assertThat(plan.shifts()).isZero();
    assertThat(plan.notesByPosition().keySet()).containsExactly(Position.FIRST);
  }

  // common practice, no source: the hand shifts on the highest string only
  @ParameterizedTest
  @CsvSource({
    "violin, G major",
    "violin, A major",
    "violin, Ab major",
    "violin, Bb major",
    "violin, G melodic minor",
    "violin, A melodic minor",
    "viola, C major",
    "viola, D major",
    "viola, C melodic minor",
    "cello, C major",
    "cello, D major"
  })
  void scaleOfThreeOctavesShiftsOnlyOnTheHighestString(String instrument, String scale) {
    Plan plan = planned(instrument, scale, 3).plan();

    assertThat(plan.notes().stream().filter(PlannedNote::shift))
        .isNotEmpty()
        .allMatch(note -> note.placement().string() == 1);
  }

  // C. Flesch, Scale System, from memory: 0-1-2-1-2-3-4 on each string, or one finger that slides;
  // with either, each finger is used on each string, and no finger plays three notes in a row
  @Test
  void chromaticScaleOfTheViolinUsesAllFingersOnEachString() {
    Plan plan = planned("violin", "chromatic on G", 2).plan();

    for (int string = 2; string <= 4; string++) {
      int there = string;
      assertThat(
              plan.notes().stream()
                  .filter(note -> note.placement().string() == there)
                  .map(PlannedNote::finger))
          .contains("0", "1", "2", "3", "4");
    }
    for (int i = 2; i < plan.notes().size(); i++) {
      assertThat(plan.notes().subList(i - 2, i + 1).stream().map(PlannedNote::finger).distinct())
          .hasSizeGreaterThan(1);
    }
  }

  // the four-octave scales of the violin: I. Galamian, Contemporary Violin Technique, from memory
  @Test
  void violinHasAtMostFourOctavesOfGMajor() {
    assertThat(planned("violin", "G major", 4).exercise().top()).isEqualTo(Pitch.parse("G7"));
    assertThatThrownBy(() -> planned("violin", "G major", 5))
        .isInstanceOf(FingeringException.class)
        .hasMessage(
            "The violin has at most 4 octaves of G major, from G3, not 5:"
                + " ask for fewer octaves.");
  }

  @Test
  void scaleOutsideThePositionIsRefusedWithTheOctavesInIt() {
    assertThatThrownBy(
            () -> planned("viola", request("D major", 2), Optional.empty(), in(Position.THIRD)))
        .isInstanceOf(FingeringException.class)
        .hasMessageStartingWith(
            "With these demands, the viola has at most 1 octave of D major, from D4, not"
                + " 2; from D3: 2 notes or chords cannot be played in the positions allowed (3):"
                + " D3 in measure 1, beat 1 ")
        .hasMessageEndingWith("; allow 1 too.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          viola | D2 | 1 | D2 is below C3, the lowest note of the viola: start higher, or leave the start out.
          bass  | D2 | 1 | D2 is below E2, the lowest note of the double bass: start higher, or leave the start out.
          viola | D5 | 3 | The viola has at most 2 octaves of D major, from D5, not 3: ask for fewer octaves, or start lower.
          viola | D8 | 1 | The viola has no octave of D major from D8: start lower.
          """)
  void startOutOfRangeIsRefused(String instrument, String from, int octaves, String message) {
    assertThatThrownBy(
            () ->
                planned(
                    instrument, request("D major", octaves), Optional.of(from), Brief.free("free")))
        .isInstanceOf(FingeringException.class)
        .hasMessage(message);
  }

  @Test
  void unplayableDoubleStopsAreRefused() {
    ScaleRequest thirds = request("G major", 1).withPattern(ScalePattern.DOUBLE_THIRDS);

    // G3 and B3 are both on the G string only.
    assertThat(planned("violin", thirds, Optional.empty(), Brief.free("free")).exercise().from())
        .isEqualTo(Pitch.parse("G4"));
    assertThatThrownBy(() -> planned("violin", thirds, Optional.of("3"), Brief.free("free")))
        .hasMessageContaining("no octave of G major in double-stop thirds")
        .hasMessageContaining("no hand can play the notes of measure 1, beat 1 together");
  }
}
