package fingering.tempo;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Grace notes, trills and chords, which are not played in strict time (common practice, no source).
 */
class OrnamentTempoTest {
  private static final PlayerSpeed PROFESSIONAL = PlayerSpeed.named("advanced");

  private static List<TempoLimit> limits(Plan plan) {
    return ComfortableTempo.of(plan, PROFESSIONAL).byMeasure();
  }

  /** The plan with some moments as grace notes. */
  private static Plan graced(Plan plan, int from, int to) {
    Passage passage = plan.passage();
    List<Moment> moments = new ArrayList<>(passage.moments());
    for (int m = from; m <= to; m++) {
      Moment moment = moments.get(m);
      moments.set(
          m,
          new Moment(
              moment.starting(),
              moment.held(),
              moment.startMicros(),
              moment.soundMicros(),
              moment.restMicros(),
              moment.slurred(),
              true,
              moment.pizzicato()));
    }
    Passage with =
        new Passage(
            passage.title(),
            passage.partId(),
            passage.partName(),
            passage.instrument(),
            passage.tempi(),
            passage.measures(),
            ImmutableList.copyOf(moments),
            passage.remarks());
    return Studies.of(with, plan.grips());
  }

  /**
   * Two notes of 20 ms would be too fast for any hand; grace notes borrow the time that they need.
   */
  @Test
  void graceNotesUseTimeOfTheirNeighbours() {
    String events = "A4/1 B4/0.02 C5/0.02 D5/0.46 A4/1";
    Plan strict = Studies.violin("quarter=60", events, "2:0:1 2:1:1 2:2:1 2:3:1 2:0:1");
    assertThat(limits(strict).get(0).factor()).isLessThan(1);
    TempoLimit eased = limits(graced(strict, 1, 2)).get(0);
    assertThat(eased.cause()).isEqualTo(LimitCause.GRACE_NOTES);
    assertThat(eased.text()).startsWith("2 grace notes in");
    assertThat(eased.freeMicros()).isEqualTo(1_000_000);
    assertThat(eased.neededMicros()).isBetween(3 * 75_000L, 3 * 92_000L);
    assertThat(eased.factor()).isGreaterThan(1);
  }

  @Test
  void graceNotesAtTheEndsLimitNothingElse() {
    Plan plan = Studies.violin("quarter=60", "A4/0.02 B4/1 C5/0.02", "2:0:1 2:1:1 2:2:1");
    TempoLimit begins = limits(graced(plan, 0, 0)).get(0);
    assertThat(begins.cause()).isEqualTo(LimitCause.GRACE_NOTES);
    assertThat(begins.text()).isEqualTo("grace note in a quarter");
    assertThat(limits(graced(plan, 2, 2))).hasSize(1);
  }

  @Test
  void aTrillWithoutAFreeFingerIsDescribedAsSuch() {
    Plan free = Studies.violin("quarter=60", "E5/0.25tr", "2:4:1");
    assertThat(limits(free).get(0).text()).isEqualTo("trill without a free finger in a sixteenth");
    Plan plan =
        Planner.of(
                Music.violin().tempo("quarter=60").notes("B4/0.25tr"),
                StandardRules.commonPractice())
            .plan(Brief.free("free"));
    assertThat(limits(plan).get(0).text()).isEqualTo("trill in a sixteenth");
  }

  private static TempoLimit planned(String events) {
    Passage passage = Music.violin().tempo("quarter=60").notes(events);
    return limits(Planner.of(passage, StandardRules.commonPractice()).plan(Brief.free("free")))
        .get(0);
  }

  @Test
  void doubleStopsAndChordsNeedMoreTimeThanSingleNotes() {
    TempoLimit single = planned("B4/0.5 C5/0.5");
    TempoLimit two = planned("F4+D5/0.5 G4+E5/0.5");
    TempoLimit chord = planned("G3+D4+B4+G5/0.5 A4/0.5");
    assertThat(two.cause()).isEqualTo(LimitCause.CHORD);
    assertThat(two.text()).isEqualTo("double stop in an eighth");
    assertThat(chord.text()).isEqualTo("chord in an eighth");
    assertThat(List.of(single, two, chord)).extracting(TempoLimit::neededMicros).isSorted();
  }
}
