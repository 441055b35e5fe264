package fingering.music;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import org.junit.jupiter.api.Test;

/** What a player sees of the music around a note; at 60 quarters a minute, a quarter is 1 s. */
class SurroundingsTest {
  private static final int NONE = Surroundings.NONE;

  private static ImmutableList<Moment> moments(String events) {
    return Music.violin().tempo("quarter=60").notes(events).moments();
  }

  private static Surroundings around(String events, int moment) {
    return moments(events).get(moment).surroundings();
  }

  private static ImmutableIntArray intervals(String events, int moment) {
    return around(events, moment).intervals();
  }

  @Test
  void intervalsLeadFromTheNoteToItsNeighbours() {
    String scale = "C5/1 D5/1 E5/1 F5/1 G5/1";
    assertThat(intervals(scale, 2)).isEqualTo(ImmutableIntArray.of(-4, -2, 1, 3));
    assertThat(intervals(scale, 0)).isEqualTo(ImmutableIntArray.of(NONE, NONE, 2, 4));
    assertThat(intervals(scale, 4)).isEqualTo(ImmutableIntArray.of(-3, -2, NONE, NONE));
  }

  @Test
  void aLeapOfMoreThanAnOctaveCountsAsAnOctave() {
    assertThat(intervals("G3/1 E6/1 G3/1", 1))
        .isEqualTo(ImmutableIntArray.of(NONE, -12, -12, NONE));
    assertThat(intervals("G3/1 E6/1 G3/1", 0)).isEqualTo(ImmutableIntArray.of(NONE, NONE, 12, 0));
  }

  @Test
  void theHighestNotesOfDoubleStopsMakeTheLine() {
    assertThat(intervals("C4+E5/1 D4+G5/1", 0))
        .isEqualTo(ImmutableIntArray.of(NONE, NONE, 3, NONE));
  }

  @Test
  void aRestOfHalfASecondEndsTheLine() {
    String longRest = "C5/1 D5/1 r/0.5 E5/1 F5/1";
    assertThat(intervals(longRest, 1)).isEqualTo(ImmutableIntArray.of(NONE, -2, NONE, NONE));
    assertThat(intervals(longRest, 2)).isEqualTo(ImmutableIntArray.of(NONE, NONE, 1, NONE));
    String shortRest = "C5/1 D5/1 r/0.49 E5/1 F5/1";
    assertThat(intervals(shortRest, 1)).isEqualTo(ImmutableIntArray.of(NONE, -2, 2, 3));
  }

  @Test
  void aSlurJoinsANoteToTheNext() {
    String slurred = "C5/1 ~D5/1 E5/1";
    assertThat(around(slurred, 0).slursOn()).isTrue();
    assertThat(around(slurred, 1).slursOn()).isFalse();
    assertThat(around(slurred, 2).slursOn()).isFalse();
  }

  @Test
  void onePrintedSlurShowsTheBowingOfTheWholePassage() {
    assertThat(moments("C5/1 D5/1 E5/1 ~F5/1 G5/1"))
        .allMatch(moment -> moment.surroundings().slursPrinted());
    assertThat(moments("C5/1 D5/1 E5/1 F5/1 G5/1"))
        .noneMatch(moment -> moment.surroundings().slursPrinted());
  }

  @Test
  void thePaceIsTheMeanLengthOfTheNotesOfTheMeasure() {
    String twoMeasures =
        "C5/1 D5/1 E5/0.5 F5/0.5 G5/0.5 A5/0.5 " + "G5/0.25 F5/0.75 E5/1 D5/1 C5/1";
    assertThat(around(twoMeasures, 0).paceMicros()).isEqualTo(4_000_000 / 6);
    assertThat(around(twoMeasures, 5).paceMicros()).isEqualTo(4_000_000 / 6);
    assertThat(around(twoMeasures, 6).paceMicros()).isEqualTo(800_000);
  }

  @Test
  void aLongNoteCountsAsASecondInThePace() {
    assertThat(around("C5/3 D5/0.5 E5/0.5", 0).paceMicros()).isEqualTo(2_000_000 / 3);
  }

  @Test
  void graceNotesDoNotCountInThePace() {
    assertThat(around("C5/0.25gr D5/1 E5/1", 1).paceMicros()).isEqualTo(1_000_000);
    assertThat(around("C5/0.25gr", 0).paceMicros()).isZero();
  }

  @Test
  void aMeasureThatReturnsHasTheSameSurroundingsExceptAtItsBorders() {
    String measure = "A4/1 B4/0.5 ~C5/0.5 D5/0.5 E5/0.5 C5/1 ";
    ImmutableList<Moment> moments = moments(measure + "E5/2 G5/2 " + measure + "A5/4");
    for (int m = 2; m < 4; m++) {
      assertThat(moments.get(m + 8).surroundings()).isEqualTo(moments.get(m).surroundings());
    }
    for (int m = 0; m < 6; m++) {
      assertThat(moments.get(m + 8).surroundings().paceMicros())
          .isEqualTo(moments.get(m).surroundings().paceMicros());
    }
    assertThat(moments.get(8).surroundings()).isNotEqualTo(moments.get(0).surroundings());
    assertThat(moments.get(13).surroundings()).isNotEqualTo(moments.get(5).surroundings());
  }

  @Test
  void surroundingsChangeNothingElse() {
    ImmutableList<Moment> moments = moments("C5/1 ~D5/0.5!de E5/0.25grsi r/1 F5/1pz");
    assertThat(Moment.withSurroundings(moments)).isEqualTo(moments);
    assertThat(moments)
        .extracting(Moment::style)
        .containsExactly(
            PlayingStyle.PLAIN, PlayingStyle.DETACHED, PlayingStyle.SINGING, PlayingStyle.PLAIN);
  }
}
