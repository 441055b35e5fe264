package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Rules of sound. Common practice, no source. */
class SoundRulesTest {

  @Test
  void anOpenStringIsChargedByHowTheLineSings() {
    assertThat(openA("A4/1").charged("open-string-singing")).isEqualTo(2);
    assertThat(openA("A4/0.2 ~B4/0.2").charged("open-string-singing")).isEqualTo(1);
    assertThat(openA("A4/0.125").charged("open-string-singing")).isZero();
    assertThat(openA("A4/0.125si").charged("open-string-singing")).isEqualTo(1);
    assertThat(openA("A4/1de").charged("open-string-singing")).isZero();
    assertThat(openA("A4/1pz").charged("open-string-singing")).isZero();
    assertThat(RuleCase.on("violin", "A4/1").by(3, "4", "1st").charged("open-string-singing"))
        .isZero();
  }

  private static RuleCase openA(String events) {
    return RuleCase.on("violin", events).by(2, "0", "1st");
  }

  @Test
  void theTopStringIsChargedAndMoreWhenOpen() {
    assertThat(RuleCase.on("violin", "G5/1").by(1, "2", "1st").charged("top-string-singing"))
        .isEqualTo(2);
    assertThat(RuleCase.on("violin", "G5/0.1").by(1, "2", "1st").charged("top-string-singing"))
        .isZero();
    assertThat(RuleCase.on("viola", "B4/1").by(1, "1", "1st").charged("top-string-singing"))
        .isZero();
    assertThat(RuleCase.on("violin", "G5/1").by(2, "4", "3rd").charged("top-string-singing"))
        .isZero();
    assertThat(RuleCase.on("violin", "E5/1").by(1, "0", "1st").charged("open-top-string"))
        .isEqualTo(1);
    assertThat(RuleCase.on("viola", "A4/1").by(1, "0", "1st").charged("open-top-string")).isZero();
  }

  @Test
  void lowPositionsAreChargedInASingingLine() {
    assertThat(RuleCase.on("violin", "D5/1").by(2, "3", "1st").charged("low-position-singing"))
        .isEqualTo(2);
    assertThat(RuleCase.on("violin", "D5/1").by(2, "1", "3rd").charged("low-position-singing"))
        .isZero();
    assertThat(RuleCase.on("cello", "E3/1").by(2, "1", "1st").charged("low-position-singing"))
        .isZero();
  }

  @Test
  void theFourthFingerIsChargedInASingingLineOnViolinAndViola() {
    assertThat(RuleCase.on("violin", "E5/1").by(2, "4", "1st").charged("fourth-finger-singing"))
        .isEqualTo(2);
    assertThat(RuleCase.on("violin", "E5/1de").by(2, "4", "1st").charged("fourth-finger-singing"))
        .isZero();
    assertThat(RuleCase.on("cello", "G3/1").by(2, "4", "1st").charged("fourth-finger-singing"))
        .isZero();
  }

  @Test
  void aCrossingOnAStepIsCharged() {
    RuleCase step = RuleCase.on("violin", "D5/1 E5/1").by(2, "3", "1st").by(1, "0", "1st");
    assertThat(step.charged("crossing-on-step")).isEqualTo(1);
    assertThat(step.charged("crossing-singing")).isEqualTo(2);
    RuleCase leap = RuleCase.on("violin", "D5/1 G5/1").by(2, "3", "1st").by(1, "2", "1st");
    assertThat(leap.charged("crossing-on-step")).isZero();
  }

  @Test
  void aStepOnOneStringOrPluckedIsNotCharged() {
    RuleCase one = RuleCase.on("violin", "D5/1 E5/1").by(2, "3", "1st").by(2, "4", "1st");
    assertThat(one.charged("crossing-singing")).isZero();
    RuleCase plucked = RuleCase.on("violin", "D5/1pz E5/1pz").by(2, "3", "1st").by(1, "0", "1st");
    assertThat(plucked.charged("crossing-singing")).isZero();
    assertThat(plucked.charged("crossing-on-step")).isZero();
  }

  @Test
  void aGraceNoteStaysOnTheStringOfItsMainNote() {
    RuleCase grace = RuleCase.on("violin", "D5/0.1gr E5/1").by(2, "3", "1st").by(1, "0", "1st");
    assertThat(grace.charged("crossing-at-ornament")).isEqualTo(1);
    RuleCase one = RuleCase.on("violin", "D5/0.1gr E5/1").by(2, "3", "1st").by(2, "4", "1st");
    assertThat(one.charged("crossing-at-ornament")).isZero();
    RuleCase plain = RuleCase.on("violin", "D5/0.1 E5/1").by(2, "3", "1st").by(1, "0", "1st");
    assertThat(plain.charged("crossing-at-ornament")).isZero();
  }

  @Test
  void aShiftOffTheBeatIsCharged() {
    RuleCase off = RuleCase.on("violin", "B4/0.5 D5/0.5").by(2, "1", "1st").by(2, "1", "3rd");
    assertThat(off.charged("shift-off-beat")).isEqualTo(1);
    RuleCase on = RuleCase.on("violin", "B4/1 D5/1").by(2, "1", "1st").by(2, "1", "3rd");
    assertThat(on.charged("shift-off-beat")).isZero();
  }

  @Test
  void eachPositionAboveThirdIsCharged() {
    assertThat(RuleCase.on("violin", "F5/1").by(2, "1", "5th").charged("high-position"))
        .isEqualTo(2);
    assertThat(RuleCase.on("violin", "D5/1").by(2, "1", "3rd").charged("high-position")).isZero();
  }
}
