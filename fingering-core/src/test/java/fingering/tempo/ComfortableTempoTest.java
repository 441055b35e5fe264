package fingering.tempo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableList;
import fingering.music.BeatUnit;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.music.TempoChange;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Tempo limits of small examples, and their descriptions. */
class ComfortableTempoTest {
  private static final PlayerSpeed PROFESSIONAL = PlayerSpeed.named("advanced");

  /** B4 in 1st and D5 in 3rd, each with the first finger of the A string. */
  private static final String UP = "2:1:1 2:1:3";

  private static ComfortableTempo tempo(Plan plan) {
    return ComfortableTempo.of(plan, PROFESSIONAL);
  }

  private static TempoLimit tightest(Plan plan) {
    return tempo(plan).tightest(1).get(0);
  }

  /** Fitts's law (1954, from memory): time = a + b log2(2 distance / target), in microseconds. */
  private static double fitts(double distance) {
    return 1000 * (40 + 20 * Math.log(2 * distance / 15) / Math.log(2));
  }

  /** Millimetres from the nut of a string of 328 mm: L (1 − 2^(−n/12)). */
  private static double fromNut(double semitones) {
    return 328 * (1 - Math.pow(2, -semitones / 12));
  }

  /** The hand is 12/7 semitones above the nut in 1st, 36/7 in 3rd; a letter is 12/7 wide. */
  @Test
  void aShiftNeedsTheTimeOfFittssLawAndUsesTheEndOfTheNoteBefore() {
    TempoLimit limit = tightest(Studies.violin("quarter=150", "B4/0.25 D5/0.25", UP));
    double distance = fromNut(36.0 / 7) - fromNut(12.0 / 7);
    assertThat(limit.cause()).isEqualTo(LimitCause.SHIFT);
    assertThat(limit.text()).isEqualTo("shift from 1st to 3rd in a sixteenth");
    assertThat((double) limit.neededMicros()).isCloseTo(fitts(distance), within(1.0));
    assertThat(limit.freeMicros()).isEqualTo(90_000);
    assertThat(limit.factor()).isCloseTo(90_000 / fitts(distance), within(1e-5));
    assertThat(limit.place()).hasToString("measure 1, beat 1.25");
  }

  @Test
  void aShiftUnderASlurHasLessTime() {
    Plan detached = Studies.violin("quarter=150", "B4/0.25 D5/0.25", UP);
    Plan slurred = Studies.violin("quarter=150", "B4/0.25 ~D5/0.25", UP);
    assertThat(tightest(slurred).freeMicros()).isEqualTo(85_000);
    assertThat(tightest(slurred).factor()).isLessThan(tightest(detached).factor());
  }

  @Test
  void aShiftUsesTheWholeTimeOfARestAndAnOpenString() {
    Plan rest = Studies.violin("quarter=150", "B4/0.25 r/0.25 D5/0.25", UP);
    assertThat(tightest(rest).freeMicros()).isEqualTo(190_000);
    String fingerings = "2:1:1 2:0:1 2:1:3";
    TempoLimit open = tightest(Studies.violin("quarter=150", "B4/0.25 A4/0.5 D5/0.25", fingerings));
    assertThat(open.cause()).isNotEqualTo(LimitCause.SHIFT);
    assertThat(
            tempo(Studies.violin("quarter=150", "B4/0.25 A4/0.125 D5/0.25", fingerings))
                .byMeasure())
        .allSatisfy(limit -> assertThat(limit.cause()).isEqualTo(LimitCause.FINGERS));
  }

  private static String cause(String events, String fingerings) {
    return tightest(Studies.violin("quarter=120", events, fingerings)).text();
  }

  @Test
  void aLimitIsNamedAfterItsLongestComponent() {
    assertThat(cause("A4/0.5 B4/0.5", "2:0:1 2:1:1")).isEqualTo("change of finger in an eighth");
    assertThat(cause("D5/0.5 E5/0.5", "2:3:1 2:4:1"))
        .isEqualTo("third and fourth finger in an eighth");
    assertThat(cause("B4/1:3 B4/1", "2:1:1 2:1:1")).isEqualTo("new bow in a triplet eighth");
    assertThat(cause("A4/0.25 E5/1", "2:0:1 1:0:1")).isEqualTo("string crossing in a sixteenth");
    assertThat(cause("D4/0.25 E5/1", "3:0:1 1:0:1")).isEqualTo("bow skips a string in a sixteenth");
    assertThat(cause("B4/0.75 G5/1", "2:1:1 1:2:1"))
        .isEqualTo("string crossing in a dotted eighth");
    assertThat(cause("B4/1 E4/1", "2:1:1 3:1:1")).isEqualTo("string crossing in a quarter");
    assertThat(cause("B4/1 F4/1", "2:1:1 3:2:1")).isEqualTo("string crossing in a quarter");
    assertThat(cause("C5/0.5 E4/1", "2:2:1 3:1:1")).isEqualTo("string crossing in an eighth");
    assertThat(cause("F#5/0.5 C5/1", "1:1:1 2:2:1")).isEqualTo("string crossing in an eighth");
    assertThat(cause("C5/0.5 F#4/1", "2:2:1 3:2:1"))
        .isEqualTo("same finger on another string in an eighth");
    assertThat(cause("B4/0.5pz C5/0.5pz", "2:1:1 2:2:1")).isEqualTo("pizzicato in an eighth");
    assertThat(cause("C5/0.5 C#5/0.5", "2:2:1 2:2:1")).isEqualTo("slide of a finger in an eighth");
    assertThat(cause("B4/0.25tr C5/1", "2:1:1 2:2:1")).isEqualTo("trill in a sixteenth");
    assertThat(cause("B4/1.3 C5/1", "2:1:1 2:2:1")).isEqualTo("change of finger in 0.65 s");
  }

  @Test
  void aRunNeedsMoreTimeThanItsSingleChanges() {
    String sixteen = "B4/0.25 ~C#5/0.25 ~D5/0.25 ~C#5/0.25 ".repeat(5);
    String fingerings = "2:1:1 2:2:1 2:3:1 2:2:1 ".repeat(5);
    TempoLimit run = tightest(Studies.violin("quarter=60", sixteen, fingerings));
    assertThat(run.cause()).isEqualTo(LimitCause.RUN);
    assertThat(run.text()).isEqualTo("16 notes in a row, 4.0 a second");
    // The note after it is in the next measure, and not one of the sixteen.
    assertThat(run.measures()).isEqualTo(run.first().measure());
    TempoLimit later =
        tightest(Studies.violin("quarter=60", "D5/2 " + sixteen, "2:3:1 " + fingerings));
    assertThat(later.cause()).isEqualTo(LimitCause.RUN);
    assertThat(later.measures()).isEqualTo(later.first().measure() + "–" + later.last().measure());
    assertThat(later.last().measureIndex()).isEqualTo(later.first().measureIndex() + 1);
    Plan few = Studies.violin("quarter=60", "B4/0.25 ~C#5/0.25 ~D5/0.25", "2:1:1 2:2:1 2:3:1");
    assertThat(tightest(few).factor()).isGreaterThan(run.factor());
  }

  /** Four quarters in a measure: each run is reported with all of its measures. */
  @Test
  void runsThatShareAMeasureAreReportedOnce() {
    String sixteen = "B4/0.25 ~C#5/0.25 ~D5/0.25 ~C#5/0.25 ".repeat(20);
    String fingerings = "2:1:1 2:2:1 2:3:1 2:2:1 ".repeat(20);
    ComfortableTempo tempo = tempo(Studies.violin("quarter=60", sixteen, fingerings));
    ImmutableList<TempoLimit> apart = tempo.tightestDistinct(3);
    assertThat(apart.get(0)).isEqualTo(tempo.tightest(1).get(0));
    for (int i = 0; i < apart.size(); i++) {
      for (TempoLimit later : apart.subList(i + 1, apart.size())) {
        assertThat(apart.get(i).overlapsRun(later)).isFalse();
      }
    }
    assertThat(tempo.tightest(2)).hasSize(2);
    assertThat(tempo.tightest(2).get(0).overlapsRun(tempo.tightest(2).get(1))).isTrue();
  }

  /** Half as fast again is common practice, no source. */
  @Test
  void halfAsFastAgainIsWellAbove() {
    Plan slow = Studies.violin("quarter=40", "B4/4 D5/4", UP);
    assertThat(tempo(slow).wellAbove()).isTrue();
    assertThat(tempo(Studies.violin("quarter=250", "B4/0.25 D5/0.25", UP)).wellAbove()).isFalse();
    assertThat(ComfortableTempo.wellAbove(1.5)).isTrue();
    assertThat(ComfortableTempo.wellAbove(1.49)).isFalse();
  }

  @Test
  void theTempoHasTheUnitOfTheMarkAndIsRoundedDown() {
    Plan plan = Studies.violin("dotted-quarter=100", "B4/0.5 D5/0.5", UP);
    ComfortableTempo tempo = tempo(plan);
    double exact = 100 * tempo.factor().getAsDouble();
    assertThat(tempo.tempo().orElseThrow().unit()).isEqualTo(new BeatUnit("quarter", 1));
    assertThat(tempo.tempo().orElseThrow().perMinute())
        .isEqualByComparingTo(new BigDecimal((int) exact));
    assertThat(tempo.exceeded()).isFalse();
    assertThat(tempo(Studies.violin("quarter=250", "B4/0.25 D5/0.25", UP)).exceeded()).isTrue();
  }

  /** The second measure is marked twice as fast. It has the tightest limit, at its own mark. */
  @Test
  void everyLimitUsesTheTempoInForceThere() {
    Plan plan = Studies.violin("quarter=60", "B4/4 D5/2 B4/2", "2:1:1 2:1:3 2:1:1");
    Passage passage = plan.passage();
    TempoChange later = new TempoChange(BigFraction.of(4), Tempo.parse("half=60"));
    List<Moment> moments = passage.moments();
    Moment last = moments.get(2);
    Moment early =
        new Moment(
            last.starting(), last.held(), 5_000_000, 1_000_000, 0, last.slurred(), false, false);
    Passage two =
        new Passage(
            passage.title(),
            passage.partId(),
            passage.partName(),
            passage.instrument(),
            ImmutableList.of(passage.tempi().get(0), later),
            passage.measures(),
            ImmutableList.of(moments.get(0), moments.get(1), early),
            ImmutableList.of());
    ComfortableTempo tempo = tempo(Studies.of(two, plan.grips()));
    TempoLimit tightest = tempo.tightest(1).get(0);
    assertThat(tightest.moment()).isEqualTo(2);
    assertThat(tightest.marked()).isEqualTo(Tempo.parse("half=60"));
    assertThat(tightest.tempo().orElseThrow().unit()).isEqualTo(new BeatUnit("half", 0));
    assertThat(tempo.marked()).isEqualTo(Tempo.parse("quarter=60"));
    assertThat(tempo.tempo().orElseThrow().unit()).isEqualTo(BeatUnit.QUARTER);
    assertThat(tempo.factor()).hasValue(tightest.factor());
  }

  @Test
  void aSingleNoteHasNoLimitAndNoMetronomeMarkIsOverAThousand() {
    ComfortableTempo none = tempo(Studies.violin("quarter=60", "B4/1", "2:1:1"));
    assertThat(none.byMeasure()).isEmpty();
    assertThat(none.factor()).isEmpty();
    assertThat(none.tempo()).isEmpty();
    assertThat(none.exceeded()).isFalse();
    ComfortableTempo slow = tempo(Studies.violin("quarter=120", "B4/8 C5/8", "2:1:1 2:2:1"));
    assertThat(slow.factor().orElseThrow()).isGreaterThan(9);
    assertThat(slow.tempo()).isEmpty();
  }

  @Test
  void eachMeasureOccursOnceAndTheTightestFirst() {
    String events = "B4/1 D5/1 B4/0.5 D5/1.5 B4/0.25 D5/0.25 B4/3.5 D5/4";
    String fingerings = "2:1:1 2:1:3 2:1:1 2:1:3 2:1:1 2:1:3 2:1:1 2:1:3";
    ComfortableTempo tempo = tempo(Studies.violin("quarter=60", events, fingerings));
    assertThat(tempo.byMeasure())
        .extracting(limit -> limit.place().measure())
        .containsExactly("1", "2", "3");
    assertThat(tempo.tightest(3)).extracting(TempoLimit::factor).isSorted();
    assertThat(tempo.tightest(2)).hasSize(2);
    assertThat(tempo.tightest(3).get(0).place().measure()).isEqualTo("2");
  }

  /**
   * Common practice, no source: the speed of a professional violinist: single bows on changing
   * sixteenths at quarter = 132, not at 176; slurred ones at 152, not at 208.
   */
  @Test
  void knownSpeedsOfProfessionalsAreComfortable() {
    String fingerings = "2:1:1 2:2:1 2:3:1 2:2:1 ".repeat(8);
    String detached = "B4/0.25 C#5/0.25 D5/0.25 C#5/0.25 ".repeat(8);
    String slurred = "~B4/0.25 ~C#5/0.25 ~D5/0.25 ~C#5/0.25 ".repeat(8);
    assertThat(tempo(Studies.violin("quarter=132", detached, fingerings)).exceeded()).isFalse();
    assertThat(tempo(Studies.violin("quarter=176", detached, fingerings)).exceeded()).isTrue();
    assertThat(tempo(Studies.violin("quarter=152", slurred, fingerings)).exceeded()).isFalse();
    assertThat(tempo(Studies.violin("quarter=208", slurred, fingerings)).exceeded()).isTrue();
  }

  @Test
  void cellistsAndBassistsNeedMoreTimeForTheSameMovement() {
    List<ComfortableTempo> tempi =
        List.of(
            tempo(Studies.violin("quarter=60", "B4/1 B4/1", "2:1:1 2:1:1")),
            tempo(
                Studies.plan(
                    "cello", Music.cello().tempo("quarter=60"), "E3/1 E3/1", "2:1:1 2:1:1")),
            tempo(
                Studies.plan(
                    "bass", Music.on("bass").tempo("quarter=60"), "E2/1 E2/1", "2:1:1 2:1:1")));
    assertThat(tempi)
        .extracting(tempo -> -tempo.factor().orElseThrow())
        .isSorted()
        .doesNotHaveDuplicates();
  }

  @Test
  void levelsAreNamedLikePresetsAndSortedFastestFirst() {
    assertThat(PlayerSpeed.all())
        .extracting(PlayerSpeed::name)
        .containsExactlyInAnyOrderElementsOf(fingering.scoring.Weights.presets());
    assertThat(PlayerSpeed.all()).extracting(PlayerSpeed::actionPercent).isSorted();
    assertThat(PlayerSpeed.all()).extracting(PlayerSpeed::shiftPercent).isSorted();
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PlayerSpeed.named("wizard"))
        .withMessage(
            "there is no level 'wizard'; choose one of advanced, common-practice,"
                + " intermediate, beginner");
  }
}
