package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.fingerboard.Taken;
import fingering.player.Player;
import fingering.scoring.CostRule;
import org.junit.jupiter.api.Test;

/** Rules on new skills. Common practice, no source. */
class PlayerRulesTest {
  private static Player who(String... lines) {
    return Player.parse("test.yaml", String.join("\n", lines));
  }

  private static RuleCase violin(String events) {
    return RuleCase.on("violin", events);
  }

  @Test
  void nothingIsNewToAnUnknownPlayer() {
    RuleCase path = violin("B4/1 F5/1").by(2, "1", "1st").by(2, "2", "4th");
    for (CostRule rule : PlayerRules.of(Player.UNKNOWN)) {
      assertThat(path.charged(rule.id())).as(rule.id()).isZero();
    }
    assertThat(path.newTo(Player.UNKNOWN)).isEmpty();
    RuleCase pair = violin("B4/1 C5/1").by(2, "1", "1st").by(2, "2", "1st");
    assertThat(pair.newTo(Player.UNKNOWN)).isEmpty();
  }

  @Test
  void rulesOnUnlistedSkillsAreIdle() {
    assertThat(StandardRules.all())
        .filteredOn(CostRule::idle)
        .extracting(CostRule::id)
        .containsExactly(
            "new-position",
            "new-finger-pattern",
            "new-finger-spacing",
            "new-extension",
            "new-shift");
    Player player = who("positions: 1", "patterns: 2-3", "extensions: none", "shifts: none");
    assertThat(StandardRules.forPlayer(player)).noneMatch(CostRule::idle);
  }

  @Test
  void anUnlistedPositionIsNewWhereAFingerIsDown() {
    RuleCase third = violin("D5/1").by(2, "1", "3rd");
    assertThat(third.charged("new-position", who("positions: 1"))).isEqualTo(1);
    assertThat(third.charged("new-position", who("positions: 1, 3"))).isZero();
    assertThat(third.newTo(who("positions: half-2"))).containsExactly("3rd position");
    RuleCase open = violin("A4/1").by(2, "0", "3rd");
    assertThat(open.charged("new-position", who("positions: 1"))).isZero();
  }

  @Test
  void inFirstPositionThePattern23CoversTheUsualPlaces() {
    Player beginner = who("patterns: 2-3");
    for (String usual : new String[] {"B4/1 1", "C#5/1 2", "D5/1 3", "E5/1 4"}) {
      String finger = usual.substring(usual.length() - 1);
      RuleCase path = violin(usual.substring(0, usual.length() - 2)).by(2, finger, "1st");
      assertThat(path.charged("new-finger-pattern", beginner)).as(usual).isZero();
    }
    RuleCase low = violin("C5/1").by(2, "2", "1st");
    assertThat(low.charged("new-finger-pattern", beginner)).isEqualTo(1);
    assertThat(low.newTo(beginner)).containsExactly("a low second finger");
    assertThat(violin("Bb4/1").by(2, "1", "1st").newTo(beginner))
        .containsExactly("a low first finger");
    assertThat(violin("D#5/1").by(2, "3", "1st").newTo(beginner))
        .containsExactly("a high third finger");
    assertThat(violin("Eb5/1").by(2, "4", "1st").newTo(beginner))
        .containsExactly("a low fourth finger");
  }

  @Test
  void eachPatternCoversItsOwnPlace() {
    RuleCase lowSecond = violin("C5/1").by(2, "2", "1st");
    assertThat(lowSecond.charged("new-finger-pattern", who("patterns: 1-2"))).isZero();
    RuleCase lowFirst = violin("Bb4/1").by(2, "1", "1st");
    assertThat(lowFirst.charged("new-finger-pattern", who("patterns: 2-3, 0-1"))).isZero();
    assertThat(lowFirst.charged("new-finger-pattern", who("patterns: 1-2, 2-3, 3-4"))).isEqualTo(1);
    RuleCase highThird = violin("D#5/1").by(2, "3", "1st");
    assertThat(highThird.charged("new-finger-pattern", who("patterns: 3-4"))).isZero();
    assertThat(highThird.charged("new-finger-pattern", who("patterns: apart"))).isZero();
    assertThat(highThird.charged("new-finger-pattern", who("patterns: 1-2"))).isEqualTo(1);
  }

  @Test
  void aHandWithTwoHalfStepsNeedsBothPatterns() {
    // B, C, D and E flat: 1-2 and 3-4 together.
    RuleCase lowFourth = violin("Eb5/1").by(2, "4", "1st");
    assertThat(lowFourth.charged("new-finger-pattern", who("patterns: 1-2"))).isEqualTo(1);
    assertThat(lowFourth.charged("new-finger-pattern", who("patterns: 1-2, 3-4"))).isZero();
  }

  @Test
  void aboveFirstPositionTwoNotesAreJudgedByTheirSpacing() {
    Player twoThree = who("patterns: 2-3");
    RuleCase together = violin("E5/1 F5/1").by(2, "2", "3rd").by(2, "3", "3rd");
    assertThat(together.charged("new-finger-spacing", twoThree)).isZero();
    assertThat(together.charged("new-finger-spacing", who("patterns: 1-2, 3-4, apart")))
        .isEqualTo(1);
    assertThat(together.newTo(who("patterns: 1-2"))).containsExactly("2 and 3 together");
    RuleCase whole = violin("E5/1 F#5/1").by(2, "2", "3rd").by(2, "3", "3rd");
    assertThat(whole.newTo(twoThree)).containsExactly("2 and 3 a whole step apart");
    assertThat(whole.charged("new-finger-spacing", who("patterns: 1-2"))).isZero();
  }

  @Test
  void aDescendingPairIsJudgedLikeAnAscendingOne() {
    RuleCase down = violin("F5/1 E5/1").by(2, "3", "3rd").by(2, "2", "3rd");
    assertThat(down.newTo(who("patterns: 1-2"))).containsExactly("2 and 3 together");
  }

  @Test
  void aPairIsNotJudgedAcrossStringsPositionsOrALongRest() {
    Player player = who("patterns: 1-2");
    RuleCase strings = violin("E5/1 Bb5/1").by(2, "2", "3rd").by(1, "3", "2nd");
    assertThat(strings.charged("new-finger-spacing", player)).isZero();
    RuleCase shift = violin("E5/1 F5/1").by(2, "2", "3rd").by(2, "2", "4th");
    assertThat(shift.charged("new-finger-spacing", player)).isZero();
    RuleCase rest = violin("E5/1 r/1 F5/1").by(2, "2", "3rd").by(2, "3", "3rd");
    assertThat(rest.charged("new-finger-spacing", player)).isZero();
  }

  @Test
  void aPairIsNotNewIfTheFingerBetweenCouldMakeItLearned() {
    RuleCase minorThird = violin("D5/1 F5/1").by(2, "1", "3rd").by(2, "3", "3rd");
    assertThat(minorThird.charged("new-finger-spacing", who("patterns: 1-2"))).isZero();
    assertThat(minorThird.charged("new-finger-spacing", who("patterns: 2-3"))).isZero();
    assertThat(minorThird.newTo(who("patterns: 3-4")))
        .containsExactly("1 and 3 a minor third apart");
  }

  @Test
  void inFirstPositionAPairCanBeNewThoughItsNotesAreNot() {
    // Each note is in a hand shape with 2 and 3 together, the second with a low first finger.
    Player player = who("patterns: 0-1, 2-3");
    RuleCase pair = violin("B4/1 C5/1").by(2, "1", "1st").by(2, "2", "1st");
    assertThat(pair.charged("new-finger-pattern", player)).isZero();
    assertThat(pair.charged("new-finger-spacing", player)).isEqualTo(1);
    Player beginner = who("patterns: 2-3");
    assertThat(pair.newTo(beginner)).containsExactly("a low second finger");
    RuleCase back = violin("B4/1 C5/1 B4/1").by(2, "1", "1st").by(2, "2", "1st").by(2, "1", "1st");
    assertThat(back.newTo(beginner)).containsExactly("a low second finger");
  }

  @Test
  void threeWholeStepsAndAnAugmentedSecondHaveTheirOwnPatterns() {
    RuleCase tritone = violin("G5/1 C#6/1").by(2, "4", "3rd").by(1, "3", "3rd");
    assertThat(tritone.charged("new-finger-spacing", who("patterns: 1-2"))).isZero();
    RuleCase apart = violin("D5/1 G#5/1").by(2, "1", "3rd").by(2, "4", "3rd");
    assertThat(apart.newTo(who("patterns: 1-2, 2-3, 3-4")))
        .containsExactly("1 and 4 an augmented fourth apart");
    assertThat(apart.charged("new-finger-spacing", who("patterns: apart"))).isZero();
    RuleCase wide = violin("Eb5/1 F#5/1").by(2, "2", "3rd").by(2, "3", "3rd");
    assertThat(wide.newTo(who("patterns: 1-2, 2-3, 3-4, apart")))
        .containsExactly("2 and 3 an augmented second apart");
    assertThat(wide.charged("new-finger-spacing", who("patterns: 1-2, 3-4, augmented second")))
        .isZero();
  }

  @Test
  void theExtendedCelloHandIsNewOnlyForFingersThatMove() {
    Player closed = who("patterns: closed");
    RuleCase back = RuleCase.on("cello", "Bb3/1").by(1, "1", "1st");
    assertThat(back.charged("new-finger-pattern", closed)).isEqualTo(1);
    assertThat(back.newTo(closed)).containsExactly("the hand extended back");
    assertThat(back.charged("new-finger-pattern", who("patterns: closed, extended back"))).isZero();
    RuleCase forward = RuleCase.on("cello", "Eb4/1").by(1, "4", "1st");
    assertThat(forward.newTo(closed)).containsExactly("the hand extended forward");
    assertThat(RuleCase.on("cello", "B3/1").by(1, "1", "1st").newTo(closed)).isEmpty();
  }

  @Test
  void theCelloExtensionIsLearnedUnderEitherHeadingAndChargedOnce() {
    RuleCase back = RuleCase.on("cello", "Bb3/1").by(1, "1", "1st");
    assertThat(back.newTo(who("extensions: none"))).containsExactly("the hand extended back");
    assertThat(back.newTo(who("extensions: none", "patterns: closed"))).hasSize(1);
    assertThat(back.newTo(who("extensions: first back", "patterns: closed"))).isEmpty();
    assertThat(back.newTo(who("extensions: none", "patterns: closed, extended back"))).isEmpty();
  }

  /** One note in the backward extension. */
  private static RuleCase extendedBack(String note, String finger) {
    Placement placement =
        Taken.on("cello").all(note, 1, finger, "1st").stream()
            .filter(one -> one.frame().shape() == Frame.Shape.EXTENDED_BACK)
            .findFirst()
            .orElseThrow();
    return RuleCase.on("cello", note + "/1").by(Grip.of(placement));
  }

  @Test
  void fingersThatStayInTheExtensionCountAsClosed() {
    RuleCase stays = extendedBack("D4", "4");
    assertThat(stays.newTo(who("patterns: extended back"))).containsExactly("the closed hand");
    assertThat(stays.newTo(who("patterns: closed"))).isEmpty();
    assertThat(stays.newTo(who("extensions: none"))).isEmpty();
    RuleCase moves = extendedBack("Bb3", "1");
    assertThat(moves.newTo(who("patterns: extended back"))).isEmpty();
  }

  @Test
  void aFingerCanReachForwardInThumbPosition() {
    Placement reaching =
        Taken.on("cello").on("E5", 1).stream()
            .filter(one -> one.frame().shape() == Frame.Shape.THUMB && one.stretch() > 0)
            .findFirst()
            .orElseThrow();
    RuleCase path = RuleCase.on("cello", "E5/1").by(Grip.of(reaching));
    assertThat(path.charged("new-extension", who("extensions: first back"))).isEqualTo(1);
    assertThat(path.charged("new-extension", who("extensions: fourth forward"))).isZero();
    RuleCase rests = RuleCase.on("cello", "A4/1").by(1, "T", "thumb");
    assertThat(rests.charged("new-extension", who("extensions: none"))).isZero();
  }

  @Test
  void aFingerAtItsPlaceIsNoExtensionInAnySpelling() {
    Player none = who("extensions: none");
    assertThat(violin("Fb5/1").by(2, "4", "1st").charged("new-extension", none)).isZero();
    assertThat(violin("Cx5/1").by(2, "1", "3rd").charged("new-extension", none)).isZero();
  }

  @Test
  void thumbPositionIsAPositionAndAPatternAndChargedOnce() {
    RuleCase thumb = RuleCase.on("cello", "A4/1").by(1, "T", "thumb");
    assertThat(thumb.newTo(who("positions: 1-4"))).containsExactly("thumb position");
    assertThat(thumb.newTo(who("patterns: closed"))).containsExactly("thumb position");
    assertThat(thumb.newTo(who("positions: 1-4", "patterns: closed"))).hasSize(1);
    assertThat(thumb.newTo(who("positions: 1-4", "patterns: closed, thumb"))).isEmpty();
    assertThat(thumb.newTo(who("positions: 1-4, thumb", "patterns: closed"))).isEmpty();
  }

  @Test
  void theFourthFingerReachesUpToTheNextLetter() {
    RuleCase stretched = violin("C6/1").by(1, "4", "1st");
    assertThat(stretched.charged("new-extension", who("extensions: none"))).isEqualTo(1);
    assertThat(stretched.newTo(who("extensions: first back")))
        .containsExactly("an extended fourth finger");
    assertThat(stretched.newTo(who("extensions: fourth forward", "patterns: 2-3"))).isEmpty();
    RuleCase inPlace = violin("B5/1").by(1, "4", "1st");
    assertThat(inPlace.charged("new-extension", who("extensions: none"))).isZero();
    RuleCase third = violin("Eb6/1").by(1, "4", "3rd");
    assertThat(third.charged("new-extension", who("extensions: none"))).isEqualTo(1);
  }

  @Test
  void theFirstFingerReachesBackAboveFirstPosition() {
    RuleCase back = violin("C#5/1").by(2, "1", "3rd");
    assertThat(back.newTo(who("extensions: fourth forward")))
        .containsExactly("the first finger drawn back");
    assertThat(back.charged("new-extension", who("extensions: first back"))).isZero();
    assertThat(violin("Db5/1").by(2, "1", "3rd").newTo(who("extensions: none"))).isEmpty();
    assertThat(violin("A#4/1").by(2, "1", "1st").newTo(who("extensions: none"))).isEmpty();
  }

  private static void shifts(RuleCase shift, String word, String phrase) {
    Player all =
        who(
            "shifts: rest, open string, same finger, first finger, another finger, another string, slur");
    Player none = who("shifts: none");
    assertThat(shift.charged("new-shift", all)).isZero();
    assertThat(shift.charged("new-shift", none)).isEqualTo(1);
    assertThat(shift.charged("new-shift", who("shifts: " + word))).isZero();
    assertThat(shift.newTo(none)).containsExactly(phrase);
  }

  @Test
  void everyKindOfShiftIsNewUnlessListed() {
    shifts(
        violin("B4/1 r/0.25 D5/1").by(2, "1", "1st").by(2, "1", "3rd"),
        "rest",
        "a shift over a rest");
    shifts(
        violin("A4/1 D5/1").by(2, "0", "1st").by(2, "1", "3rd"),
        "open string",
        "a shift on an open string");
    shifts(
        violin("B4/1 D5/1").by(2, "1", "1st").by(2, "1", "3rd"),
        "same finger",
        "a shift on one finger");
    shifts(
        violin("G5/1 A5/1").by(1, "2", "1st").by(1, "1", "3rd"),
        "first finger",
        "a shift by the first finger");
    shifts(
        violin("A5/1 G5/1").by(1, "1", "3rd").by(1, "2", "1st"),
        "first finger",
        "a shift by the first finger");
    shifts(
        violin("B4/1 E5/1").by(2, "1", "1st").by(2, "2", "3rd"),
        "another finger",
        "a shift to another finger");
    shifts(
        violin("B4/1 A5/1").by(2, "1", "1st").by(1, "1", "3rd"),
        "another string",
        "a shift to another string");
  }

  @Test
  void aSlurIsChargedInAdditionToTheKind() {
    RuleCase slurred = violin("B4/1 ~D5/1").by(2, "1", "1st").by(2, "1", "3rd");
    assertThat(slurred.charged("new-shift", who("shifts: none"))).isEqualTo(2);
    assertThat(slurred.newTo(who("shifts: same finger"))).containsExactly("a shift under a slur");
    assertThat(slurred.newTo(who("shifts: slur"))).containsExactly("a shift on one finger");
    RuleCase open = violin("A4/1 ~D5/1").by(2, "0", "1st").by(2, "1", "3rd");
    assertThat(open.charged("new-shift", who("shifts: open string"))).isZero();
  }

  @Test
  void withoutAShiftNoShiftIsNew() {
    RuleCase stays = violin("B4/1 C5/1").by(2, "1", "1st").by(2, "2", "1st");
    assertThat(stays.charged("new-shift", who("shifts: none"))).isZero();
  }
}
