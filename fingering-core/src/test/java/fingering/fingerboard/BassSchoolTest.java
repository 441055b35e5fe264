package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.base.Splitter;
import fingering.music.Harmonic;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The hand of the double bass, apart from the table of positions. */
class BassSchoolTest {
  private static final Instrument BASS = Instruments.standard().named("bass");
  private static final Instrument EXTENDED =
      BASS.tuned(Instruments.standard().tuning(BASS, "c-extension"));
  private final Taken bass = Taken.on("bass");
  private final Taken extended = Taken.on(EXTENDED, LeftHand.MEDIUM);
  private final Taken four = Taken.on("bass", LeftHand.MEDIUM.withFourFingers(true));

  // F. Simandl, New Method for the Double Bass, from memory
  @ParameterizedTest
  @CsvSource({"5, F3", "5½, F#3", "6, G3", "6½, G#3"})
  void fromFifthPositionUpTheThirdFingerCanReplaceTheFourth(String position, String note) {
    assertThat(bass.all(note, 1, "3", position)).hasSize(1);
    assertThat(bass.all(note, 1, "4", position)).hasSize(1);
  }

  // Simandl, from memory: the fourth finger is not used in 7th position
  @Test
  void inSeventhPositionTheFingersAreFirstSecondAndThird() {
    assertThat(bass.all("G3", 1, "1", "7")).hasSize(1);
    assertThat(bass.all("G#3", 1, "2", "7")).hasSize(1);
    assertThat(bass.all("A3", 1, "3", "7")).hasSize(1);
  }

  private List<Placement> octave(Finger finger, String position) {
    PitchRequest harmonic =
        new PitchRequest(Pitch.parse("G3"), Optional.empty(), Optional.of(Harmonic.NATURAL), false);
    return bass.all(harmonic, 1, finger.symbol(), position).stream()
        .filter(p -> p.touch().orElseThrow().partial() == 2)
        .toList();
  }

  // Simandl, from memory: from 5th position, the third finger reaches the octave harmonic
  @Test
  void theThirdFingerTouchesTheOctaveHarmonicFromBelow() {
    assertThat(octave(Finger.THIRD, "5")).hasSize(1).allMatch(p -> p.stretch() > 0);
    assertThat(octave(Finger.THIRD, "6")).hasSize(1).allMatch(p -> p.stretch() == 0);
    assertThat(octave(Finger.THIRD, "4")).isEmpty();
  }

  // common practice, no source
  @ParameterizedTest
  @CsvSource({"T, G3", "1, G#3", "1, A3", "2, A3", "2, Bb3", "3, B3", "3, C4"})
  void atTheOctaveThumbAndThreeFingersSpanAMajorThirdToAFourth(String finger, String note) {
    assertThat(bass.all(note, 1, finger, "thumb"))
        .anyMatch(p -> p.frame().thumb().equals(OptionalInt.of(12)) && p.stretch() == 0);
  }

  // common practice, no source
  @Test
  void theThirdFingerReachesNoFurtherThanAFourthAboveTheThumb() {
    assertThat(bass.all("C#4", 1, "3", "thumb"))
        .isNotEmpty()
        .noneMatch(p -> p.frame().thumb().equals(OptionalInt.of(12)));
  }

  // common practice, no source
  @ParameterizedTest
  @CsvSource({"F#1+B1, 1@4 1@3, 1", "C2+F2, 1@3 1@2, 2", "F2+Bb2, 1@2 1@1, 2", "D3+G3, 3@2 3@1, 6"})
  void oneFingerBarsAFourthOnAdjacentStrings(String fourth, String fingers, String position) {
    assertThat(Chords.on("bass").in(position, fourth)).contains(fingers);
  }

  // common practice, no source
  @Test
  void theThumbBarsAFourthAtTheOctave() {
    assertThat(Chords.on("bass").in("thumb", "D3+G3")).contains("T@2 T@1");
  }

  // On a string of 1060 mm, a minor third from the first finger measures 159 mm in half position,
  // and 134 mm in 2½ position, with the first finger on the major third; the reach is 140 mm
  @ParameterizedTest
  @CsvSource({"half, G#2 A2 Bb2 -", "1, A2 Bb2 B2 -", "2½, B2 C3 - C#3", "4, D3 Eb3 - E3"})
  void fourFingersSpanAMinorThirdOnlyWithinReach(String position, String notes) {
    boolean wide = !notes.endsWith("-");
    List<String> each = Splitter.on(' ').splitToList(notes);
    assertThat(four.all(each.get(0), 1, "1", position)).hasSize(1);
    assertThat(four.all(each.get(1), 1, "2", position)).hasSize(1);
    if (wide) {
      assertThat(four.all(each.get(3), 1, "3", position)).hasSize(1);
      assertThat(four.all(each.get(3), 1, "4", position)).isEmpty();
      String minorThird = BASS.string(1).above(Pitch.parse(each.get(0)).midi() - 43 + 3).toString();
      assertThat(four.all(minorThird, 1, "4", position)).hasSize(1);
    } else {
      assertThat(four.all(each.get(2), 1, "4", position)).hasSize(1);
      assertThat(four.all(each.get(2), 1, "3", position)).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"small, 2½, false", "medium, 2½, true", "medium, 2, false", "large, 2, true"})
  void aLargerHandUsesFourFingersInLowerPositions(String hand, String position, boolean opens) {
    Taken bassHand = Taken.on("bass", LeftHand.parse(hand).withFourFingers(true));
    String third = position.equals("2") ? "C3" : "C#3";
    assertThat(!bassHand.all(third, 1, "3", position).isEmpty()).isEqualTo(opens);
  }

  // Simandl, from memory
  @Test
  void withoutFourFingersTheFourthFingerSpansNoMinorThird() {
    assertThat(bass.all("Bb2", 1, "4", "half")).hasSize(1);
    assertThat(bass.all("F3", 1, "4", "4")).isEmpty();
    assertThat(four.all("F3", 1, "4", "4")).hasSize(1);
  }

  // S. Adler, The Study of Orchestration, from memory: the extension of the E string goes to C
  @Test
  void theExtendedStringIsOpenAtTheEndOfTheExtensionAndAtTheNut() {
    assertThat(extended.on("C1", 4)).isNotEmpty().allMatch(Placement::open);
    assertThat(extended.on("E1", 4)).anyMatch(Placement::open);
  }

  // common practice, no source
  @ParameterizedTest
  @CsvSource({"C#1, 1", "D1, 1 2", "Eb1, 1 2 4", "E1, 2 4"})
  void onTheExtensionTheFingersStopInHalfPosition(String note, String fingers) {
    List<Placement> stopped = extended.on(note, 4).stream().filter(p -> !p.open()).toList();
    assertThat(stopped.stream().map(p -> p.finger().symbol()).distinct().sorted())
        .containsExactlyElementsOf(Splitter.on(' ').split(fingers));
    assertThat(stopped)
        .allMatch(p -> p.frame().display().equals("half behind the nut"))
        .allMatch(p -> p.frame().position().toString().equals("half"));
  }

  // L(1 − 2^(4/12)): on a string of 1060 mm, C is 276 mm behind the nut
  @Test
  void distancesBehindTheNutAreNegative() {
    assertThat(extended.on("C1", 4).get(0).millimetres()).isCloseTo(-275.5, within(0.5));
    assertThat(extended.on("D1", 4)).allMatch(p -> p.semitones() == -2 && p.millimetres() < 0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"C1", "D1", "Eb1"})
  void aBassWithoutAnExtensionGoesNoLowerThanE(String note) {
    assertThat(bass.fingerboard().placements(Pitch.parse(note))).isEmpty();
    assertThat(extended.fingerboard().placements(Pitch.parse(note))).isNotEmpty();
  }

  @Test
  void aBassWithoutAnExtensionHasNoFramesBehindTheNut() {
    assertThat(bass.fingerboard().frames()).allMatch(frame -> frame.first() > 0);
    assertThat(bass.on("E1", 4)).allMatch(Placement::open);
  }

  @Test
  void theOtherStringsOfABassWithAnExtensionStartAtTheNut() {
    assertThat(extended.on("G#1", 3)).isEmpty();
    assertThat(extended.on("A1", 3)).allMatch(Placement::open);
    assertThat(extended.on("F1", 4)).allMatch(p -> p.semitones() == 1 && p.millimetres() > 0);
  }
}
