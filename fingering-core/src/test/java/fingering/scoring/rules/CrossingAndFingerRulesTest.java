package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.fingerboard.Grip;
import fingering.fingerboard.Taken;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.scoring.HandMovement;
import fingering.scoring.Transition;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rules on crossings and fingers. Common practice, no source. */
class CrossingAndFingerRulesTest {
  private static RuleCase crossing(String events) {
    return RuleCase.on("viola", events).by(4, "1", "1st").by(3, "2", "1st");
  }

  private static RuleCase skip(String events) {
    return RuleCase.on("viola", events).by(4, "1", "1st").by(2, "1", "1st");
  }

  @Test
  void aCrossingToTheNeighbouringStringCountsTwoHalves() {
    assertThat(crossing("D3/1 B3/1").charged("crossing")).isEqualTo(2);
    RuleCase stays = RuleCase.on("viola", "D3/1 E3/1").by(4, "1", "1st").by(4, "2", "1st");
    assertThat(stays.charged("crossing")).isZero();
  }

  @Test
  void pizzicatoHasNoCrossings() {
    assertThat(crossing("D3/1pz B3/1pz").charged("crossing")).isZero();
    assertThat(skip("D3/1pz E4/1pz").charged("skipped-string")).isZero();
    assertThat(crossing("D3/0.1pz B3/0.1pz").charged("crossing-quick")).isZero();
  }

  @Test
  void afterALongRestThereIsNoCrossing() {
    assertThat(crossing("D3/1 r/0.5 B3/1").charged("crossing")).isZero();
    assertThat(crossing("D3/1 r/0.25 B3/1").charged("crossing")).isEqualTo(2);
  }

  @Test
  void aCrossingUnderASlurIsChargedInAddition() {
    assertThat(crossing("D3/1 ~B3/1").charged("crossing-slurred")).isEqualTo(2);
    assertThat(crossing("D3/1 B3/1").charged("crossing-slurred")).isZero();
  }

  @Test
  void aCrossingAfterASixteenthIsQuick() {
    assertThat(crossing("D3/0.125 B3/1").charged("crossing-quick")).isEqualTo(1);
    assertThat(crossing("D3/0.25 B3/0.25").charged("crossing-quick")).isZero();
  }

  @Test
  void aCrossingFromOrToAnOpenStringIsHalfAndNeverQuick() {
    RuleCase to = RuleCase.on("viola", "F3/0.125 G3/1").by(4, "3", "1st").by(3, "0", "1st");
    assertThat(to.charged("crossing")).isEqualTo(1);
    assertThat(to.charged("crossing-quick")).isZero();
    RuleCase from = RuleCase.on("viola", "C3/0.125 A3/1").by(4, "0", "1st").by(3, "1", "1st");
    assertThat(from.charged("crossing")).isEqualTo(1);
    assertThat(from.charged("crossing-quick")).isZero();
  }

  @Test
  void aSkippedStringCountsTwiceUnderASlur() {
    assertThat(skip("D3/1 E4/1").charged("skipped-string")).isEqualTo(1);
    assertThat(skip("D3/1 ~E4/1").charged("skipped-string")).isEqualTo(2);
    assertThat(crossing("D3/1 B3/1").charged("skipped-string")).isZero();
  }

  @Test
  void aCrossingToAHigherNoteOnALowerStringIsAgainstTheLine() {
    RuleCase up = RuleCase.on("viola", "A4/1 B4/1").by(1, "0", "3rd").by(2, "4", "3rd");
    assertThat(up.charged("crossing-against-line")).isEqualTo(1);
    RuleCase down = RuleCase.on("viola", "B4/1 A4/1").by(2, "4", "3rd").by(1, "0", "3rd");
    assertThat(down.charged("crossing-against-line")).isEqualTo(1);
  }

  @Test
  void aCrossingOverTwoStringsCanBeAgainstTheLine() {
    RuleCase down = RuleCase.on("violin", "B4/1 A4/1").by(4, "3", "7th").by(2, "0", "7th");
    assertThat(down.charged("crossing-against-line")).isEqualTo(1);
  }

  @Test
  void aCrossingWithTheLineOrOnOneNoteIsNotAgainstIt() {
    assertThat(crossing("D3/1 B3/1").charged("crossing-against-line")).isZero();
    RuleCase unison = RuleCase.on("viola", "G3/1 G3/1").by(3, "0", "1st").by(4, "4", "1st");
    assertThat(unison.charged("crossing-against-line")).isZero();
    RuleCase rest = RuleCase.on("viola", "A4/1 r/1 B4/1").by(1, "0", "3rd").by(2, "4", "3rd");
    assertThat(rest.charged("crossing-against-line")).isZero();
  }

  @Test
  void anOpenStringIsForTheWayUp() {
    RuleCase down = RuleCase.on("violin", "A4/1 G4/1").by(2, "0", "1st").by(3, "3", "1st");
    assertThat(down.charged("open-string-descending")).isEqualTo(1);
    RuleCase up = RuleCase.on("violin", "G4/1 A4/1").by(3, "3", "1st").by(2, "0", "1st");
    assertThat(up.charged("open-string-descending")).isZero();
    RuleCase leap = RuleCase.on("violin", "A4/1 F4/1").by(2, "0", "1st").by(3, "2", "1st");
    assertThat(leap.charged("open-string-descending")).isZero();
    RuleCase stopped = RuleCase.on("violin", "A4/1 G4/1").by(3, "4", "1st").by(3, "3", "1st");
    assertThat(stopped.charged("open-string-descending")).isZero();
  }

  @Test
  void aStoppedFifthIsHalfAHop() {
    RuleCase fifth = RuleCase.on("viola", "D3/1 A3/1").by(4, "1", "1st").by(3, "1", "1st");
    assertThat(fifth.charged("same-finger-hop")).isEqualTo(1);
    RuleCase tritone = RuleCase.on("viola", "D3/1 Ab3/1").by(4, "1", "1st").by(3, "1", "1st");
    assertThat(tritone.charged("same-finger-hop")).isEqualTo(2);
    assertThat(crossing("D3/1 B3/1").charged("same-finger-hop")).isZero();
  }

  @Test
  void anOpenStringIsNoHop() {
    RuleCase open = RuleCase.on("viola", "C3/1 G3/1").by(4, "0", "1st").by(3, "0", "1st");
    assertThat(open.charged("same-finger-hop")).isZero();
  }

  @Test
  void aChromaticStepWithOneFingerIsASlide() {
    RuleCase slide = RuleCase.on("viola", "E3/1 Eb3/1").by(4, "2", "1st").by(4, "2", "1st");
    assertThat(slide.charged("finger-slide")).isEqualTo(1);
    RuleCase shift = RuleCase.on("viola", "E3/1 F3/1").by(4, "2", "1st").by(4, "2", "2nd");
    assertThat(shift.charged("finger-slide")).isZero();
  }

  @Test
  void aSlideToAnotherLetterCountsDouble() {
    RuleCase slide = RuleCase.on("viola", "E3/1 D#3/1").by(4, "2", "1st").by(4, "2", "1st");
    assertThat(slide.charged("finger-slide")).isEqualTo(2);
  }

  @Test
  void neighbouringFingersAreASemitoneOrAToneApart() {
    RuleCase tone = RuleCase.on("viola", "D3/1 E3/1").by(4, "1", "1st").by(4, "2", "1st");
    assertThat(tone.charged("wide-fingers")).isZero();
    assertThat(tone.charged("narrow-fingers")).isZero();
    RuleCase augmented = RuleCase.on("viola", "Eb3/1 F#3/1").by(4, "2", "1st").by(4, "3", "1st");
    assertThat(augmented.charged("wide-fingers")).isEqualTo(1);
  }

  @Test
  void firstToFourthInADiminishedFourthIsNarrow() {
    // E♭ to F♭ is a semitone; from 1 to 4 the hand naturally spans a fourth, five semitones
    RuleCase narrow = RuleCase.on("viola", "D#3/1 Gb3/1").by(4, "1", "1st").by(4, "4", "1st");
    assertThat(narrow.charged("narrow-fingers")).isEqualTo(1);
  }

  @Test
  void aRepeatedNoteWithAnotherFingeringIsCharged() {
    RuleCase anew = RuleCase.on("viola", "G3/1 G3/1").by(3, "0", "1st").by(4, "4", "1st");
    assertThat(anew.charged("repeated-note")).isEqualTo(1);
    RuleCase same = RuleCase.on("viola", "G3/1 G3/1").by(3, "0", "1st").by(3, "0", "1st");
    assertThat(same.charged("repeated-note")).isZero();
    RuleCase rest = RuleCase.on("viola", "G3/1 r/1 G3/1").by(3, "0", "1st").by(4, "4", "1st");
    assertThat(rest.charged("repeated-note")).isZero();
  }

  @Test
  void aForwardExtensionIsOneChange() {
    RuleCase opens = RuleCase.on("cello", "D2/1 F#2/1").by(4, "1", "1st").by(4, "4", "1st");
    assertThat(opens.charged("cello-extension-change")).isEqualTo(1);
    assertThat(opens.charged("shift")).isZero();
    RuleCase closed = RuleCase.on("cello", "D2/1 F2/1").by(4, "1", "1st").by(4, "4", "1st");
    assertThat(closed.charged("cello-extension-change")).isZero();
  }

  @Test
  void theForwardExtensionIsEasyFromTheFirstFingerOnly() {
    RuleCase above = RuleCase.on("cello", "E2/1 F#2/1").by(4, "3", "1st").by(4, "4", "1st");
    assertThat(above.charged("cello-extension-upper")).isEqualTo(1);
    RuleCase first = RuleCase.on("cello", "D2/1 F#2/1").by(4, "1", "1st").by(4, "4", "1st");
    assertThat(first.charged("cello-extension-upper")).isZero();
    RuleCase open = RuleCase.on("cello", "E2/1 G2/1").by(4, "2", "1st").by(3, "0", "1st");
    assertThat(open.charged("cello-extension-upper")).isZero();
  }

  @Test
  void theForwardExtensionMovesTheSecondFingerToo() {
    RuleCase second = RuleCase.on("cello", "Eb2/1 F#2/1").by(4, "2", "1st").by(4, "4", "1st");
    assertThat(second.charged("cello-extension-upper")).isEqualTo(1);
  }

  @Test
  void theBackwardExtensionIsEasyFromAnyFinger() {
    RuleCase back = RuleCase.on("cello", "C3/1 Ab2/1").by(3, "4", "1st").by(3, "1", "1st");
    assertThat(back.charged("cello-extension-change")).isEqualTo(1);
    assertThat(back.charged("cello-extension-upper")).isZero();
  }

  @Test
  void fingersWithOnePlaceEachAreNeverNarrow() {
    RuleCase cello = RuleCase.on("cello", "A2/1 C3/1").by(3, "1", "1st").by(3, "4", "1st");
    assertThat(cello.charged("narrow-fingers")).isZero();
    RuleCase viola = RuleCase.on("viola", "A#3/1 Db4/1").by(3, "1", "1st").by(3, "4", "1st");
    assertThat(viola.charged("narrow-fingers")).isPositive();
  }

  private static int crossed(Grip before, Grip now) {
    List<Moment> moments = Music.viola().notes("D3/1 B3/1").moments();
    return HandMovement.stringsCrossed(
        Transition.between(moments.get(0), moments.get(1)), before, now);
  }

  @Test
  void theBowCrossesNoOneOrTwoStrings() {
    Taken hand = Taken.on("viola");
    Grip low = hand.by("D3", 4, "1", "1st");
    assertThat(crossed(low, hand.by("E3", 4, "2", "1st"))).isZero();
    assertThat(crossed(low, hand.by("B3", 3, "2", "1st"))).isEqualTo(1);
    assertThat(crossed(low, hand.by("E4", 2, "1", "1st"))).isEqualTo(2);
  }
}
