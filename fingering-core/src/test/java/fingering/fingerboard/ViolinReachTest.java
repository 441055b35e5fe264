package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Harmonic;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Range and reach of violin and viola: common practice, no source. */
class ViolinReachTest {
  private static final Chords VIOLIN = Chords.on("violin");
  private static final Chords LARGE = Chords.on("violin", LeftHand.LARGE);
  private static final Chords SMALL = Chords.on("violin", LeftHand.SMALL);

  // fingerboard 270 of 328 mm, 308 of 375 mm: 12·log2(L / (L - f)) = 29.99 and 29.8
  @ParameterizedTest
  @CsvSource({"violin, 29", "viola, 29", "cello, 31", "bass, 28"})
  void theFingerboardEndsAboveTheSecondOctave(String id, int last) {
    Instrument instrument = Instruments.standard().named(id);
    double left = instrument.stringLength() - instrument.fingerboardLength();
    assertThat(Math.floor(12 * Math.log(instrument.stringLength() / left) / Math.log(2)))
        .isEqualTo(last);
    for (int string = 1; string <= instrument.strings().size(); string++) {
      Pitch end = instrument.string(string).above(last);
      assertThat(Taken.on(id).on(end.toString(), string)).isNotEmpty();
      Pitch beyond = instrument.string(string).above(last + 1);
      assertThat(Taken.on(id).on(beyond.toString(), string)).isEmpty();
    }
  }

  // S. Adler, The Study of Orchestration, from memory: players go up to E7 and higher
  @ParameterizedTest
  @CsvSource({"violin, E7", "violin, A7", "viola, A6", "viola, D7"})
  void theHighestNotesAreOnTheHighestString(String instrument, String note) {
    assertThat(Taken.on(instrument).fingerboard().placements(Pitch.parse(note)))
        .isNotEmpty()
        .allMatch(placement -> placement.string() == 1);
  }

  // on a string of 328 mm, a minor tenth from A3 measures 108 mm, a major tenth from C4 100 mm
  @Test
  void aMediumHandHasNoTenthsInFirstPositionButInThird() {
    assertThat(VIOLIN.held("A3+C5/1")).isEmpty();
    assertThat(VIOLIN.held("A3+C#5/1")).isEmpty();
    assertThat(VIOLIN.in("3rd", "C4+E5")).contains("1@4 4@3");
    assertThat(VIOLIN.in("3rd", "D5+F6")).contains("1@2 4@1");
  }

  @Test
  void aLargeHandHasTheMinorTenthInFirstPosition() {
    assertThat(LARGE.in("1st", "A3+C5")).contains("1@4 4@3");
    assertThat(LARGE.held("A3+C#5/1")).isEmpty();
  }

  @Test
  void aSmallHandHasTheMajorTenthASemitoneHigher() {
    assertThat(SMALL.held("C4+E5/1")).isEmpty();
    assertThat(SMALL.fingers("D4+F#5")).contains("1@4 4@3");
  }

  @ParameterizedTest
  @CsvSource({"A3+A4, 1@4 4@3, 1st", "B4+B5, 1@2 4@1, 1st", "D4+D5, 1@4 4@3, 4th"})
  void firstAndFourthFingerPlayOctaves(String octave, String fingers, String position) {
    assertThat(VIOLIN.in(position, octave)).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({"C4+C5", "D4+D5", "E4+E5", "G4+G5", "C5+C6"})
  void fingeredOctavesArePossibleFromThirdPosition(String octave) {
    assertThat(VIOLIN.fingers(octave)).containsAnyOf("1@4 3@3", "1@3 3@2", "1@2 3@1");
    assertThat(VIOLIN.fingers(octave)).containsAnyOf("2@4 4@3", "2@3 4@2", "2@2 4@1");
  }

  @Test
  void fingeredOctavesAreTooWideInFirstPosition() {
    assertThat(VIOLIN.fingers("A3+A4")).isNotEmpty().doesNotContain("1@4 3@3", "2@4 4@3");
    assertThat(VIOLIN.in("half", "Ab3+Ab4")).contains("1@4 4@3").doesNotContain("1@4 3@3");
  }

  @ParameterizedTest
  @CsvSource({"E4+E4, 1@3 4@4", "B4+B4, 1@2 4@3", "F5+F5, 1@1 4@2", "G5+G5, 1@1 4@2"})
  void firstAndFourthFingerPlayUnisonsOnAdjacentStrings(String unison, String fingers) {
    assertThat(VIOLIN.fingers(unison)).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({"D4+D4, 4@4 0@3", "A4+A4, 4@3 0@2", "E5+E5, 4@2 0@1"})
  void theFourthFingerPlaysAUnisonWithAnOpenString(String unison, String fingers) {
    assertThat(VIOLIN.in("1st", unison)).contains(fingers);
  }

  @Test
  void aUnisonThatOnlyTheLowestStringHasIsImpossible() {
    assertThat(VIOLIN.held("A3+A3/1")).isEmpty();
    assertThat(VIOLIN.held("G3+G3/1")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"A3+E4, 1@4 1@3", "B3+F#4, 2@4 2@3", "F4+C5, 2@3 2@2", "E5+B5, 4@2 4@1"})
  void oneFingerPlaysFifths(String fifth, String fingers) {
    assertThat(VIOLIN.in("1st", fifth)).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({
    "A3+F4, 1@4 2@3",
    "A3+F#4, 1@4 2@3",
    "B3+G4, 2@4 3@3",
    "C5+A5, 2@2 3@1",
    "D4+B4, 0@3 1@2"
  })
  void sixthsHaveNeighbouringFingersTheLowerOneOnTheLowerString(String sixth, String fingers) {
    assertThat(VIOLIN.in("1st", sixth)).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({
    "C4+E4, 3@4 1@3",
    "D4+F4, 4@4 2@3",
    "B4+D5, 4@3 2@2",
    "C#5+E5, 2@2 0@1",
    "D5+F#5, 3@2 1@1"
  })
  void thirdsHaveFingersTwoApartTheHigherOneOnTheLowerString(String third, String fingers) {
    assertThat(VIOLIN.in("1st", third)).contains(fingers);
  }

  // the octave harmonic with an extended fourth finger in 3rd position
  @Test
  void theFourthFingerReachesTheOctaveHarmonicFromThirdPosition() {
    for (int string = 1; string <= 4; string++) {
      Pitch octave = Instruments.standard().named("violin").string(string).above(12);
      PitchRequest note =
          new PitchRequest(octave, Optional.empty(), Optional.of(Harmonic.NATURAL), false);
      List<Placement> touching = Taken.on("violin").all(note, string, "4", "3rd");
      assertThat(touching).isNotEmpty().allMatch(p -> p.touch().orElseThrow().partial() == 2);
    }
  }

  @Test
  void aMeasuredReachReplacesThatOfTheInstrument() {
    Chords reaching = Chords.on("violin", LeftHand.parse("120mm"));
    assertThat(reaching.fingers("A3+C#5")).contains("1@4 4@3");
    assertThat(Chords.on("violin", LeftHand.parse("118mm")).held("A3+C#5/1")).isEmpty();
  }

  @Test
  void theSameHandReachesWiderOnASmallerInstrument() {
    Instruments known = Instruments.standard();
    Instrument half = known.named("violin").sized(known.size(known.named("violin"), "1/2"));
    LeftHand hand = LeftHand.parse("105mm");
    assertThat(Chords.on(half, hand).fingers("A3+C#5")).contains("1@4 4@3");
    assertThat(Chords.on("violin", hand).held("A3+C#5/1")).isEmpty();
  }

  // a minor third from C on the third string measures 73 mm of the viola's 375: two whole tones
  @ParameterizedTest
  @CsvSource({"C4+Eb4, 3@3 1@2", "F3+Ab3, 3@4 1@3", "G4+Bb4, 3@2 1@1"})
  void everyHandHoldsAMinorThirdInFirstPositionOnTheViola(String third, String fingers) {
    for (LeftHand hand : List.of(LeftHand.SMALL, LeftHand.MEDIUM, LeftHand.LARGE)) {
      assertThat(Chords.on("viola", hand).in("1st", third)).as(hand.toString()).contains(fingers);
    }
  }

  @Test
  void thirdAndFourthFingerAreAtMostAToneApart() {
    assertThat(VIOLIN.held("C5+B5/1")).isNotEmpty();
    for (String notes : List.of("C4+Bb4/1", "D5+C#6/1", "A4+G5/1", "F5+E6/1")) {
      assertThat(VIOLIN.held(notes)).as(notes).isNotEmpty().noneMatch(this::thirdFarFromFourth);
    }
  }

  private boolean thirdFarFromFourth(Grip grip) {
    Placement a = grip.placements().get(0);
    Placement b = grip.placements().get(1);
    return Math.min(a.finger().number(), b.finger().number()) == 3
        && Math.abs(a.finger().number() - b.finger().number()) == 1
        && Math.abs(a.semitones() - b.semitones()) > 2;
  }
}
