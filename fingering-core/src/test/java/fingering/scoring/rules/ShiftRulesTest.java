package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.fingerboard.Geometry;
import org.junit.jupiter.api.Test;

/** Rules on shifts. Common practice, no source. */
class ShiftRulesTest {
  private static RuleCase firstToThird(String events) {
    return RuleCase.on("violin", events).by(2, "1", "1st").by(2, "1", "3rd");
  }

  @Test
  void aShiftFromFirstToThirdIsAFullShift() {
    assertThat(firstToThird("B4/1 D5/1").charged("shift")).isEqualTo(10);
    assertThat(
            RuleCase.on("violin", "B4/1 C5/1").by(2, "1", "1st").by(2, "2", "1st").charged("shift"))
        .isZero();
  }

  @Test
  void aShiftOverARestIsEasier() {
    assertThat(firstToThird("B4/1 r/1 D5/1").charged("shift")).isEqualTo(3);
    assertThat(firstToThird("B4/1 r/0.25 D5/1").charged("shift")).isEqualTo(10);
  }

  @Test
  void aShiftFromAnOpenStringIsEasier() {
    RuleCase way = RuleCase.on("violin", "A4/1 D5/1").by(2, "0", "1st").by(2, "1", "3rd");
    assertThat(way.charged("shift")).isEqualTo(5);
  }

  @Test
  void fromHalfToFirstPositionIsLessThanAFullShiftOnTheViolin() {
    RuleCase slight = RuleCase.on("violin", "Bb4/1 B4/1").by(2, "1", "half").by(2, "1", "1st");
    assertThat(slight.charged("shift")).isEqualTo(4);
    RuleCase cello = RuleCase.on("cello", "Bb3/1 B3/1").by(1, "1", "half").by(1, "1", "1st");
    assertThat(cello.charged("shift")).isEqualTo(4);
  }

  // common practice, no source
  @Test
  void theLessTheHandSpansTheLessAShiftCosts() {
    RuleCase cello = RuleCase.on("cello", "B3/1 D4/1").by(1, "1", "1st").by(1, "1", "3rd");
    assertThat(cello.charged("shift")).isEqualTo(8);
    RuleCase bass = RuleCase.on("bass", "A2/1 C3/1").by(1, "1", "1st").by(1, "1", "3rd");
    assertThat(bass.charged("shift")).isEqualTo(5);
  }

  // P. M. Fitts, 1954, from memory: difficulty depends on distance relative to target width
  @Test
  void aShiftOfTheSameIntervalIsAsFarOnTheCelloAsOnTheBass() {
    RuleCase cello = RuleCase.on("cello", "B3/1 D4/1").by(1, "1", "1st").by(1, "1", "3rd");
    RuleCase bass = RuleCase.on("bass", "A2/1 C3/1").by(1, "1", "1st").by(1, "1", "3rd");
    assertThat(bass.charged("shift-distance")).isEqualTo(cello.charged("shift-distance"));
  }

  @Test
  void aRespelledNoteWithTheSameFingerIsNoShift() {
    RuleCase way = RuleCase.on("violin", "G#5/1 Ab5/1").by(1, "2", "1st").by(1, "2", "2nd");
    assertThat(way.charged("shift")).isZero();
    assertThat(way.charged("shift-distance")).isZero();
    assertThat(way.charged("shift-changed-finger")).isZero();
  }

  @Test
  void aRespelledNoteWithAnotherFingerInAnotherPositionIsAShift() {
    RuleCase way = RuleCase.on("violin", "G#5/1 Ab5/1").by(1, "2", "1st").by(1, "1", "3rd");
    assertThat(way.charged("shift")).isEqualTo(10);
  }

  @Test
  void theDistanceIsThatOfTheFirstFingerInMillimetres() {
    // In a position a letter spans 12/7 of a semitone on average: seven letters to the octave.
    double way = Geometry.fromNut(328, 36 / 7.0) - Geometry.fromNut(328, 12 / 7.0);
    assertThat(firstToThird("B4/1 D5/1").charged("shift-distance")).isEqualTo(Math.round(way));
    assertThat(firstToThird("B4/1 r/1 D5/1").charged("shift-distance"))
        .isEqualTo(Math.round(way) / 2);
  }

  @Test
  void aSlowShiftIsNotRushed() {
    assertThat(firstToThird("B4/4 D5/4").charged("shift-rushed")).isZero();
  }

  @Test
  void aShiftBetweenSixteenthsIsRushedMoreSoUnderASlur() {
    long detached = firstToThird("B4/0.25 D5/0.25").charged("shift-rushed");
    long slurred = firstToThird("B4/0.25 ~D5/0.25").charged("shift-rushed");
    assertThat(detached).isPositive();
    assertThat(slurred).isGreaterThan(detached);
  }

  // By hand: 53 mm take 140 ms; a quarter of the sixteenth is 62 ms.
  @Test
  void missingTimeIsChargedInHundredths() {
    assertThat(firstToThird("B4/0.25 D5/0.25").charged("shift-rushed")).isEqualTo(7);
  }

  @Test
  void anOpenStringGivesTheHandItsWholeLength() {
    RuleCase open = RuleCase.on("violin", "A4/0.5 D5/1").by(2, "0", "1st").by(2, "1", "3rd");
    assertThat(open.charged("shift-rushed")).isZero();
    assertThat(firstToThird("B4/0.25 D5/1").charged("shift-rushed")).isPositive();
  }

  @Test
  void aShiftUnderASlurIsChargedUnlessFromAnOpenString() {
    assertThat(firstToThird("B4/1 ~D5/1").charged("shift-slurred")).isEqualTo(1);
    assertThat(firstToThird("B4/1 D5/1").charged("shift-slurred")).isZero();
    RuleCase open = RuleCase.on("violin", "A4/1 ~D5/1").by(2, "0", "1st").by(2, "1", "3rd");
    assertThat(open.charged("shift-slurred")).isZero();
  }

  @Test
  void aFingerThatStaysOnItsStringGuidesTheShift() {
    assertThat(firstToThird("B4/1 D5/1").charged("shift-changed-finger")).isZero();
    RuleCase other = RuleCase.on("violin", "B4/1 E5/1").by(2, "1", "1st").by(2, "2", "3rd");
    assertThat(other.charged("shift-changed-finger")).isEqualTo(1);
    RuleCase rest = RuleCase.on("violin", "B4/1 r/1 E5/1").by(2, "1", "1st").by(2, "2", "3rd");
    assertThat(rest.charged("shift-changed-finger")).isZero();
  }

  @Test
  void onlyTheFirstFingerGuidesAStepUpToItself() {
    RuleCase led = RuleCase.on("violin", "G5/1 A5/1").by(1, "2", "1st").by(1, "1", "3rd");
    assertThat(led.charged("shift-changed-finger")).isZero();
    RuleCase other = RuleCase.on("violin", "A5/1 B5/1").by(1, "3", "1st").by(1, "2", "3rd");
    assertThat(other.charged("shift-changed-finger")).isEqualTo(1);
  }

  @Test
  void theFirstFingerThatTakesOverTheSameNoteIsNotGuided() {
    RuleCase over = RuleCase.on("violin", "G5/1 G5/1").by(1, "2", "1st").by(1, "1", "2nd");
    assertThat(over.charged("shift-changed-finger")).isEqualTo(1);
  }

  @Test
  void aLeapUpToTheFirstFingerIsNotGuided() {
    RuleCase leap = RuleCase.on("violin", "G5/1 B5/1").by(1, "2", "1st").by(1, "1", "4th");
    assertThat(leap.charged("shift-changed-finger")).isEqualTo(1);
  }

  @Test
  void aShiftDownFromTheFirstFingerIsNotGuided() {
    RuleCase down = RuleCase.on("violin", "A5/1 G5/1").by(1, "1", "3rd").by(1, "2", "1st");
    assertThat(down.charged("shift-changed-finger")).isEqualTo(1);
  }

  @Test
  void aShortShiftToTheNextHighPositionIsAFullShift() {
    RuleCase high = RuleCase.on("violin", "E6/1 F#6/1").by(1, "3", "5th").by(1, "3", "6th");
    assertThat(high.charged("shift-distance")).isLessThan(20);
    assertThat(high.charged("shift")).isEqualTo(10);
  }

  @Test
  void theQuickerThePaceTheMoreAShiftIsCharged() {
    assertThat(firstToThird("B4/1 D5/1").charged("shift-quick")).isZero();
    assertThat(firstToThird("B4/0.2 D5/0.2").charged("shift-quick")).isEqualTo(10);
    assertThat(firstToThird("B4/0.1 D5/0.1").charged("shift-quick")).isEqualTo(20);
    RuleCase stay = RuleCase.on("violin", "B4/0.1 D5/0.1").by(2, "1", "1st").by(2, "3", "1st");
    assertThat(stay.charged("shift-quick")).isZero();
  }

  @Test
  void aShiftByAStepWithOneFingerCreepsButNotALeap() {
    RuleCase tone = RuleCase.on("violin", "B4/1 C#5/1").by(2, "1", "1st").by(2, "1", "2nd");
    assertThat(tone.charged("shift-creeping")).isEqualTo(2);
    RuleCase semitone = RuleCase.on("violin", "B4/1 C5/1").by(2, "1", "1st").by(2, "1", "2nd");
    assertThat(semitone.charged("shift-creeping")).isEqualTo(2);
    assertThat(firstToThird("B4/1 D5/1").charged("shift-creeping")).isZero();
  }

  @Test
  void aShiftToTheSameLetterCreepsHalf() {
    RuleCase chromatic = RuleCase.on("violin", "C5/1 C#5/1").by(2, "2", "1st").by(2, "2", "2nd");
    assertThat(chromatic.charged("shift-creeping")).isEqualTo(1);
  }

  @Test
  void onTheCelloASemitoneWithOneFingerCreepsTwice() {
    RuleCase semitone = RuleCase.on("cello", "E3/1 F3/1").by(2, "1", "1st").by(2, "1", "2nd");
    assertThat(semitone.charged("shift-creeping")).isEqualTo(4);
    RuleCase bass = RuleCase.on("bass", "A2/1 Bb2/1").by(1, "1", "1st").by(1, "1", "2nd");
    assertThat(bass.charged("shift-creeping")).isZero();
    RuleCase next = RuleCase.on("cello", "E3/1 F3/1").by(2, "1", "1st").by(2, "2", "1st");
    assertThat(next.charged("shift-creeping")).isZero();
  }

  @Test
  void afterARestOrOnAnotherStringAShiftDoesNotCreep() {
    RuleCase rest = RuleCase.on("violin", "B4/1 r/1 C#5/1").by(2, "1", "1st").by(2, "1", "2nd");
    assertThat(rest.charged("shift-creeping")).isZero();
    RuleCase other = RuleCase.on("violin", "B4/1 A5/1").by(2, "1", "1st").by(1, "1", "3rd");
    assertThat(other.charged("shift-creeping")).isZero();
  }
}
