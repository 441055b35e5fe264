package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Thumb position of the cello as in any method: common practice, no source. */
class CelloThumbTest {
  private static final Chords CELLO = Chords.on("cello");

  /** How a finger stops a note with the thumb at a place: at rest, stretched, or not at all. */
  private static String on(int thumb, String note, String finger) {
    return Taken.on("cello").all(note, 1, finger, "thumb").stream()
        .filter(p -> p.frame().thumb().equals(OptionalInt.of(thumb)))
        .findFirst()
        .map(p -> p.stretch() > 0 ? "stretched" : "at rest")
        .orElse("not");
  }

  // the D major tetrachord from the octave harmonic, the first one taught
  @ParameterizedTest
  @CsvSource({"A4, T", "B4, 1", "C#5, 2", "C5, 2", "D5, 3"})
  void atTheOctaveThumbAndThreeFingersSpanAPerfectFourth(String note, String finger) {
    assertThat(on(12, note, finger)).isEqualTo("at rest");
  }

  @Test
  void theThirdFingerStretchesToTheFifthAboveTheThumbAndNoFurther() {
    assertThat(on(12, "E5", "3")).isEqualTo("stretched");
    assertThat(on(12, "F5", "3")).isEqualTo("not");
  }

  @Test
  void theFirstFingerIsASemitoneOrAToneAboveTheThumb() {
    assertThat(on(12, "Bb4", "1")).isEqualTo("at rest");
    assertThat(on(12, "C5", "1")).isEqualTo("stretched");
    assertThat(on(12, "A4", "1")).isEqualTo("not");
  }

  @Test
  void theFourthFingerIsNotUsedInThumbPosition() {
    for (String note : List.of("B4", "C5", "D5", "E5", "F5")) {
      assertThat(on(12, note, "4")).isEqualTo("not");
    }
  }

  @Test
  void singleNotesUseTheThumbFromTheOctaveUp() {
    for (int midi = 36; midi <= 88; midi++) {
      assertThat(Taken.on("cello").fingerboard().placements(Pitches.natural(midi)))
          .allMatch(p -> p.frame().thumb().orElse(12) >= 12);
    }
    assertThat(on(12, "A4", "T")).isEqualTo("at rest");
  }

  @Test
  void withLowThumbSingleNotesUseItFromTheFifthUp() {
    Taken low = Taken.on("cello", LeftHand.MEDIUM.withLowThumb(true));
    assertThat(low.all("E4", 1, "T", "thumb")).hasSize(1);
    assertThat(low.all("Eb4", 1, "T", "thumb")).isEmpty();
    assertThat(Taken.on("cello").all("E4", 1, "T", "thumb")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"D4+A4", "E4+B4", "G3+D4", "A4+E5"})
  void theThumbBarsFifths(String fifth) {
    assertThat(CELLO.in("thumb", fifth)).containsAnyOf("T@2 T@1", "T@3 T@2");
    assertThat(CELLO.held(fifth + "/1"))
        .filteredOn(grip -> Chords.fingers(grip).equals("T@2 T@1"))
        .allMatch(
            grip -> grip.placements().get(0).semitones() == grip.placements().get(1).semitones());
  }

  @ParameterizedTest
  @ValueSource(strings = {"D4+D5", "E4+E5", "F4+F5", "A4+A5"})
  void thumbAndThirdFingerPlayOctaves(String octave) {
    assertThat(CELLO.in("thumb", octave)).contains("T@2 3@1");
  }

  @ParameterizedTest
  @CsvSource({"F4+A4, 2@2 T@1", "G4+B4, 3@2 1@1", "G4+Bb4, 3@2 1@1", "A4+C#5, 3@2 2@1"})
  void thirdsHaveTheHigherFingerOnTheLowerString(String third, String fingers) {
    assertThat(CELLO.in("thumb", third)).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({"D4+B4, T@2 1@1", "E4+C5, 1@2 2@1", "F#4+D5, 2@2 3@1", "D4+Bb4, T@2 1@1"})
  void neighbouringFingersPlaySixths(String sixth, String fingers) {
    assertThat(CELLO.in("thumb", sixth)).contains(fingers);
  }

  @ParameterizedTest
  @ValueSource(strings = {"D2+D3", "E2+E3", "F2+F3", "B2+B3", "Eb3+Eb4"})
  void stoppedOctavesOnTheNeckNeedTheLowThumb(String octave) {
    List<Grip> stopped =
        CELLO.held(octave + "/1").stream()
            .filter(grip -> grip.placements().stream().noneMatch(Placement::open))
            .toList();
    assertThat(stopped).isNotEmpty().allMatch(g -> g.frame().position().equals(Position.THUMB));
    assertThat(stopped.stream().map(Chords::fingers))
        .containsAnyOf("T@4 3@3", "T@3 3@2", "T@2 3@1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"C2+A2", "G2+E3", "C2+E3", "D3+B3", "E2+G2", "A2+D3", "C2+G2"})
  void anOpenStringNeedsNoThumbOnTheNeck(String withOpen) {
    assertThat(CELLO.held(withOpen + "/1"))
        .filteredOn(grip -> grip.placements().stream().anyMatch(Placement::open))
        .isNotEmpty()
        .allMatch(grip -> grip.frame().thumb().orElse(12) >= 12);
  }

  @Test
  void aFingerNotTheLowThumbBarsTwoStrings() {
    assertThat(CELLO.fingers("E2+B2")).isNotEmpty().doesNotContain("T@4 T@3");
  }

  // on a string of 690 mm, a fourth from the semitone above the open string measures 163 mm; thumb
  // and third finger span 156 mm with a reach of 130 mm
  @Test
  void thumbAndThirdFingerReachOneFifthFurtherThanFirstAndFourth() {
    assertThat(Chords.on("cello").fingers("C#2+C#3")).contains("T@4 3@3");
    assertThat(Chords.on("cello", LeftHand.parse("130mm")).fingers("C#2+C#3")).isEmpty();
    assertThat(Chords.on("cello", LeftHand.parse("130mm")).fingers("D2+D3")).contains("T@4 3@3");
  }

  // from a major sixth to a ninth above the nut the fourth measures 103 mm, more than second and
  // third finger of any hand span; two octaves up it is 58
  @Test
  void secondAndThirdFingerCannotSpanAFourthOnTheNeck() {
    Chords low = Chords.on("cello", LeftHand.MEDIUM.withLowThumb(true));
    assertThat(low.fingers("E3+E4")).contains("T@3 3@2").doesNotContain("2@3 3@2");
    assertThat(CELLO.fingers("D4+D5")).contains("2@3 3@2");
  }

  @Test
  void thumbPositionReachesToTheEndOfTheFingerboard() {
    Fingerboard cello = Fingerboard.of(Instruments.standard().named("cello"));
    // a fingerboard of 580 mm with a string of 690 mm: 12·log2(690 / 110) = 31.8 semitones
    assertThat(cello.placements(Pitches.natural(57 + 31)))
        .isNotEmpty()
        .allMatch(p -> p.frame().position().equals(Position.THUMB));
    assertThat(cello.placements(Pitches.natural(57 + 32))).isEmpty();
  }
}
