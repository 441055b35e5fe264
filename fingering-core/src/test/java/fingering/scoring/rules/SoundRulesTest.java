package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Rules of sound. Common practice, no source. */
class SoundRulesTest {

  @Test
  void anOpenStringIsChargedInSlowMusicOnly() {
    assertThat(RuleCase.on("violin", "A4/1").by(2, "0", "1st").charged("open-string-slow"))
        .isEqualTo(85);
    assertThat(RuleCase.on("violin", "A4/0.125").by(2, "0", "1st").charged("open-string-slow"))
        .isZero();
    assertThat(RuleCase.on("violin", "A4/1pz").by(2, "0", "1st").charged("open-string-slow"))
        .isZero();
  }

  @Test
  void theTopStringIsChargedAndMoreWhenOpen() {
    assertThat(RuleCase.on("violin", "G5/1").by(1, "2", "1st").charged("top-string-slow"))
        .isPositive();
    assertThat(RuleCase.on("violin", "G5/1").by(2, "4", "3rd").charged("top-string-slow")).isZero();
    assertThat(RuleCase.on("violin", "E5/1").by(1, "0", "1st").charged("open-top-string"))
        .isEqualTo(1);
  }

  @Test
  void lowPositionsAreChargedInSlowMusic() {
    assertThat(RuleCase.on("violin", "D5/1").by(2, "3", "1st").charged("low-position-slow"))
        .isPositive();
    assertThat(RuleCase.on("violin", "D5/1").by(2, "1", "3rd").charged("low-position-slow"))
        .isZero();
  }

  @Test
  void aCrossingOnAStepIsCharged() {
    RuleCase step = RuleCase.on("violin", "D5/1 E5/1").by(2, "3", "1st").by(1, "0", "1st");
    assertThat(step.charged("crossing-on-step")).isEqualTo(1);
    assertThat(step.charged("crossing-slow")).isEqualTo(85);
    RuleCase leap = RuleCase.on("violin", "D5/1 G5/1").by(2, "3", "1st").by(1, "2", "1st");
    assertThat(leap.charged("crossing-on-step")).isZero();
  }

  @Test
  void aStepOnOneStringOrPluckedIsNotCharged() {
    RuleCase one = RuleCase.on("violin", "D5/1 E5/1").by(2, "3", "1st").by(2, "4", "1st");
    assertThat(one.charged("crossing-slow")).isZero();
    RuleCase plucked = RuleCase.on("violin", "D5/1pz E5/1pz").by(2, "3", "1st").by(1, "0", "1st");
    assertThat(plucked.charged("crossing-slow")).isZero();
    assertThat(plucked.charged("crossing-on-step")).isZero();
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
