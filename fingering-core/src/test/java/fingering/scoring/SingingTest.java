package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Moment;
import fingering.music.Music;
import org.junit.jupiter.api.Test;

/** Pace and how much a line sings: common practice, no source. */
class SingingTest {
  /** At 60 quarters a minute, a quarter is a second. */
  private static int singing(String events) {
    var moments = Music.violin().tempo("quarter=60").notes(events).moments();
    Moment last = moments.get(moments.size() - 1);
    assertThat(NoteContext.of(last).singing()).isEqualTo(Singing.of(last));
    return Singing.of(last);
  }

  @Test
  void thePaceHasThreeClasses() {
    assertThat(Pace.of(250_000)).isEqualTo(Pace.SLOW);
    assertThat(Pace.of(249_999)).isEqualTo(Pace.MODERATE);
    assertThat(Pace.of(130_000)).isEqualTo(Pace.MODERATE);
    assertThat(Pace.of(129_999)).isEqualTo(Pace.QUICK);
    assertThat(Pace.of(1)).isEqualTo(Pace.QUICK);
  }

  @Test
  void anUnknownPaceIsModerate() {
    assertThat(Pace.of(0)).isEqualTo(Pace.MODERATE);
  }

  @Test
  void theQuickerThePaceTheHigherItsLevel() {
    assertThat(Pace.values()).extracting(Pace::level).containsExactly(0, 1, 2);
  }

  @Test
  void slowSlurredNotesSingFully() {
    assertThat(singing("A4/1 ~B4/1")).isEqualTo(2);
    assertThat(singing("A4/0.25 ~B4/0.25")).isEqualTo(2);
  }

  @Test
  void amongSlursNotesWithABowEachSingSomewhatIfTheyAreLong() {
    assertThat(singing("A4/1 ~B4/1 C5/1")).isEqualTo(1);
    assertThat(singing("A4/0.45 ~B4/0.45 C5/0.45")).isEqualTo(1);
    assertThat(singing("A4/0.4 ~B4/0.4 C5/0.4")).isZero();
  }

  @Test
  void theFirstNoteOfASlurSingsLikeTheOthers() {
    Moment first = Music.violin().tempo("quarter=60").notes("A4/1 ~B4/1").moments().get(0);
    assertThat(Singing.of(first)).isEqualTo(2);
  }

  @Test
  void withoutAnyPrintedSlurSlowNotesMayBeSlurred() {
    assertThat(singing("A4/1 B4/1")).isEqualTo(2);
    assertThat(singing("A4/0.45 B4/0.45")).isEqualTo(2);
    assertThat(singing("A4/0.4 B4/0.4")).isEqualTo(1);
    assertThat(singing("A4/0.25 B4/0.25")).isEqualTo(1);
  }

  @Test
  void notesOfModeratePaceSingSomewhatUnderASlur() {
    assertThat(singing("A4/0.2 ~B4/0.2")).isEqualTo(1);
    assertThat(singing("A4/0.2 B4/0.2")).isZero();
    assertThat(singing("A4/0.2 ~B4/0.2 C5/0.2")).isZero();
  }

  @Test
  void quickNotesDoNotSing() {
    assertThat(singing("A4/0.1 ~B4/0.1")).isZero();
  }

  @Test
  void dolceMakesALineSing() {
    assertThat(singing("A4/1 ~B4/1 C5/1si")).isEqualTo(2);
    assertThat(singing("A4/0.2 B4/0.2si")).isEqualTo(2);
    assertThat(singing("A4/0.1 B4/0.1si")).isEqualTo(1);
  }

  @Test
  void staccatoAndPizzicatoDoNotSing() {
    assertThat(singing("A4/1 B4/1de")).isZero();
    assertThat(singing("A4/1 ~B4/1de")).isZero();
    assertThat(singing("A4/1 B4/1pz")).isZero();
    assertThat(singing("A4/1 B4/1pzsi")).isZero();
  }
}
