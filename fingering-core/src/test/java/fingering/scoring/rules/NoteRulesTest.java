package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.fingerboard.LeftHand;
import fingering.fingerboard.Taken;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Note;
import fingering.scoring.Charge;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules on single grips. Common practice, no source. */
class NoteRulesTest {
  private static long charged(String rule, String event, int string, String finger, String where) {
    return RuleCase.on("violin", event).by(string, finger, where).charged(rule);
  }

  @Test
  void thirdPositionIsMoreFamiliarThanSecond() {
    long first = charged("position", "D5/1", 2, "3", "1st");
    long second = charged("position", "D5/1", 2, "2", "2nd");
    long third = charged("position", "D5/1", 2, "1", "3rd");
    assertThat(first).isZero();
    assertThat(third).isPositive().isLessThan(second);
  }

  @Test
  void anOpenStringIsFreeInEveryPosition() {
    assertThat(charged("position", "A4/1", 2, "0", "5th")).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "Bb3, half, 2",
    "B3, 1st, 0",
    "C#4, 2nd, 3",
    "D4, 3rd, 3",
    "E4, 4th, 2",
    "F#4, 5th, 5",
    "G4, 6th, 6",
    "A4, 7th, 7"
  })
  void fourthPositionIsFamiliarOnTheCello(String note, String position, long steps) {
    RuleCase way = RuleCase.on("cello", note + "/1").by(1, "1", position);
    assertThat(way.charged("position")).isEqualTo(steps);
  }

  @ParameterizedTest
  @CsvSource({"G#2, half, 0", "A2, 1st, 1", "B2, 2½, 2", "C3, 3rd, 3", "D3, 4th, 4"})
  void onTheBassEachPositionIsOneStepMore(String note, String position, long steps) {
    RuleCase way = RuleCase.on("bass", note + "/1").by(1, "1", position);
    assertThat(way.charged("position")).isEqualTo(steps);
  }

  @ParameterizedTest
  @CsvSource({"A4, 9", "B4, 10", "C#5, 11", "G4, 11"})
  void thumbPositionIsMostFamiliarAtTheOctave(String note, long steps) {
    Taken hand = Taken.on("cello", LeftHand.MEDIUM.withLowThumb(true));
    RuleCase way = RuleCase.on("cello", note + "/1").by(hand.by(note, 1, "T", "thumb"));
    assertThat(way.charged("position")).isEqualTo(steps);
  }

  @Test
  void positionsAboveThirdCostMoreStepByStep() {
    long before = charged("position", "D5/1", 2, "1", "3rd");
    for (String place : ImmutableList.of("E5 4th", "F5 5th", "G5 6th", "A5 7th", "B5 8th")) {
      int blank = place.indexOf(' ');
      String event = place.substring(0, blank) + "/1";
      long now = charged("position", event, 2, "1", place.substring(blank + 1));
      assertThat(now).as(place).isGreaterThan(before);
      before = now;
    }
  }

  @ParameterizedTest
  @CsvSource({
    "E5/0.5, 2",
    "E5/1, 4",
    "E5/0.7, 4",
    "E5/0.6, 2",
    "E5/0.5!, 4",
    "E5/0.125, 3",
    "E5/0.2, 2"
  })
  void theFourthFingerCostsMoreOnAQuickLongOrAccentedNote(String event, long halves) {
    assertThat(charged("fourth-finger", event, 2, "4", "1st")).isEqualTo(halves);
  }

  @Test
  void otherFingersAreNotChargedAsFourthFinger() {
    assertThat(charged("fourth-finger", "D5/4!", 2, "3", "1st")).isZero();
  }

  @Test
  void theFourthFingerOfCelloAndBassIsAsGoodAsTheOthers() {
    assertThat(RuleCase.on("cello", "G3/1!").by(2, "4", "1st").charged("fourth-finger")).isZero();
    assertThat(RuleCase.on("bass", "B2/1!").by(1, "4", "1st").charged("fourth-finger")).isZero();
  }

  @ParameterizedTest
  @CsvSource({"E5/0.25, 0", "E5/0.5, 2", "E5/1, 7", "E5/4, 12", "E5/1pz, 0"})
  void aLongOpenStringIsCharged(String event, long tenths) {
    assertThat(charged("open-string", event, 1, "0", "1st")).isEqualTo(tenths);
  }

  @Test
  void anOpenStringUnderASlurCostsMore() {
    RuleCase slurred = RuleCase.on("violin", "D5/1 ~E5/1").by(2, "3", "1st").by(1, "0", "1st");
    assertThat(slurred.charged("open-string")).isEqualTo(9);
    RuleCase brief = RuleCase.on("violin", "D5/0.25 ~E5/0.25").by(2, "3", "1st").by(1, "0", "1st");
    assertThat(brief.charged("open-string")).isZero();
  }

  @Test
  void anExtensionIsMeasuredInMillimetres() {
    Grip grip = Taken.on("violin").by("C6", 1, "4", "1st");
    assertThat(charged("extension", "C6/1", 1, "4", "1st"))
        .isPositive()
        .isEqualTo(Math.round(grip.top().stretch()));
    assertThat(charged("extension", "B5/1", 1, "4", "1st")).isZero();
  }

  @Test
  void highOnALowStringIsCountedFromTheMajorSixth() {
    assertThat(charged("low-string-high", "E4/1", 4, "1", "5th")).isZero();
    assertThat(charged("low-string-high", "G4/1", 4, "3", "5th")).isEqualTo(3);
    assertThat(charged("low-string-high", "G6/1", 1, "3", "7th")).isZero();
  }

  @Test
  void highNotesOnTheLowCelloStringsCostMore() {
    assertThat(RuleCase.on("cello", "C4/1").by(2, "1", "6th").charged("low-string-high"))
        .isEqualTo(1);
    assertThat(RuleCase.on("cello", "F3/1").by(3, "1", "6th").charged("low-string-high"))
        .isEqualTo(2);
  }

  @Test
  void theTwoUpperStringsUnderTheThumbAreOnePlace() {
    assertThat(RuleCase.on("cello", "E4/1").by(2, "1", "thumb").charged("low-string-high"))
        .isZero();
    assertThat(RuleCase.on("cello", "A3/1").by(3, "1", "thumb").charged("low-string-high"))
        .isEqualTo(10);
    assertThat(RuleCase.on("cello", "B4/1").by(2, "2", "thumb").charged("low-string-high"))
        .isEqualTo(12);
  }

  @Test
  void aFingerAgainstTheSpellingIsCharged() {
    assertThat(charged("finger-against-spelling", "G#4/1", 3, "4", "1st")).isEqualTo(1);
    assertThat(charged("finger-against-spelling", "G#4/1", 3, "3", "1st")).isZero();
  }

  @Test
  void aTrillOnTheFourthFingerOrAnOpenStringIsCharged() {
    assertThat(charged("trill", "E5/1tr", 2, "4", "1st")).isEqualTo(4);
    assertThat(charged("trill", "E5/1tr", 1, "0", "1st")).isEqualTo(1);
    assertThat(charged("trill", "D5/1tr", 2, "3", "1st")).isZero();
    assertThat(charged("trill", "E5/1", 2, "4", "1st")).isZero();
  }

  @Test
  void aTrillOnTheUpperNoteOfADoubleStopIsCharged() {
    Moment plain = Music.violin().notes("G3+A4/1").moments().get(0);
    Note upper = Music.violin().notes("A4/1tr").notes().get(0);
    Moment trilled =
        new Moment(
            ImmutableList.of(plain.starting().get(0), upper),
            ImmutableList.of(),
            0,
            plain.soundMicros(),
            0,
            false,
            false,
            false);
    Grip onFourth =
        new GripFinder(Taken.on("violin").fingerboard())
            .grips(trilled).stream()
                .filter(grip -> grip.top().finger() == Finger.FOURTH)
                .findFirst()
                .orElseThrow();
    assertThat(trill().amount(NoteContext.of(trilled), onFourth)).isEqualTo(4);
  }

  @Test
  void aTrillAboveAHeldNoteIsJudgedOnItsOwnString() {
    Moment held = Music.viola().notes("C3*2+G3/1 A3/1tr").moments().get(1);
    assertThat(
            new GripFinder(Taken.on("viola").fingerboard())
                .grips(held).stream().filter(grip -> grip.top().finger() == Finger.FIRST))
        .isNotEmpty()
        .allSatisfy(grip -> assertThat(trill().amount(NoteContext.of(held), grip)).isZero());
  }

  @Test
  void aTrillOnAnOpenStringAfterReleasingAHeldNoteIsCharged() {
    Moment letGo = Music.viola().notes("D3*2+G3/1 C3/1tr").moments().get(1);
    assertThat(new GripFinder(Taken.on("viola").fingerboard()).grips(letGo))
        .isNotEmpty()
        .allSatisfy(
            grip ->
                assertThat(trill().amount(NoteContext.of(letGo), grip))
                    .isEqualTo(grip.top().trill().isPresent() ? 1 : 4));
  }

  private static NoteRule trill() {
    return StandardRules.all().stream()
        .filter(rule -> rule.id().equals("trill"))
        .map(NoteRule.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static RuleCase chord(String event) {
    var moment = Music.violin().notes(event).moments().get(0);
    GripFinder finder = new GripFinder(Taken.on("violin").fingerboard());
    return RuleCase.on("violin", event).by(finder.grips(moment).get(0));
  }

  @Test
  void eachHeldFingerOfAChordIsCharged() {
    RuleCase sixth = chord("A3+F4/1");
    assertThat(sixth.charged("chord-shape")).isEqualTo(2);
    assertThat(sixth.charged("divided")).isZero();
    assertThat(charged("chord-shape", "E5/1", 2, "4", "1st")).isZero();
  }

  @Test
  void aChordThatOneHandCannotHoldIsDivided() {
    RuleCase semitone = chord("G3+Ab3/1");
    assertThat(semitone.charged("divided")).isEqualTo(2);
  }

  @Test
  void theExplanationAddsUpToTheCostOfThePath() {
    var passage = Music.violin().notes("B4/1 ~D5/0.25 E5/1!");
    Taken hand = Taken.on("violin");
    ImmutableList<Grip> grips =
        ImmutableList.of(
            hand.by("B4", 2, "1", "1st"),
            hand.by("D5", 2, "1", "3rd"),
            hand.by("E5", 2, "2", "3rd"));
    Scoring scoring = StandardRules.commonPractice();
    long sum = 0;
    for (int m = 0; m < 3; m++) {
      NoteContext context = NoteContext.of(passage.moments().get(m));
      sum += scoring.costs(context, ImmutableList.of(grips.get(m))).get(0);
      if (m > 0) {
        TimedTransition transition =
            TimedTransition.between(passage.moments().get(m - 1), passage.moments().get(m));
        sum += scoring.cost(transition, grips.get(m - 1), grips.get(m));
      }
    }
    var charges =
        scoring.explain(
            passage.moments(),
            grips.stream().map(ImmutableList::of).collect(ImmutableList.toImmutableList()),
            grips);
    assertThat(charges.stream().mapToLong(Charge::cost).sum()).isEqualTo(sum).isPositive();
    assertThat(charges).allSatisfy(charge -> assertThat(charge.cost()).isPositive());
  }
}
