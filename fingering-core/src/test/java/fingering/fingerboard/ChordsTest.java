package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.tables.Instrument;
import fingering.tables.Instruments;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Chords of three and four notes as parts print them: common practice, no source. */
class ChordsTest {
  private static final Chords VIOLIN = Chords.on("violin");

  @ParameterizedTest
  @CsvSource({
    "G3+D4+B4+G5, 0@4 0@3 1@2 2@1, G major",
    "G3+E4+C5+G5, 0@4 1@3 2@2 2@1, C major over G",
    "A3+E4+C#5+A5, 1@4 1@3 2@2 3@1, A major",
    "A3+E4+C5+A5, 1@4 1@3 2@2 3@1, A minor",
    "A3+F#4+D5+A5, 1@4 2@3 3@2 3@1, D major over A",
    "D4+A4+F#5, 0@3 0@2 1@1, D major",
    "Bb3+D4+Bb4+F5, 2@4 0@3 1@2 1@1, B flat major",
    "G3+Eb4+C5, 0@4 1@3 2@2, C minor over G",
    "B3+G#4+E5, 2@4 3@3 4@2, E major over B"
  })
  void violinChordsOfFirstPosition(String notes, String fingers, String name) {
    assertThat(VIOLIN.in("1st", notes)).as(name).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({
    "C3+G3+E4+C5, 0@4 0@3 1@2 2@1, 1st, C major",
    "D3+A3+F#4+D5, 1@4 1@3 2@2 3@1, 1st, D major",
    "C3+A3+F4+C5, 0@4 1@3 2@2 2@1, 1st, F major over C",
    "F3+C4+A4+F5, 1@4 1@3 2@2 3@1, 3rd, F major"
  })
  void violaChordsAreViolinChordsAFifthLower(
      String notes, String fingers, String position, String name) {
    assertThat(Chords.on("viola").in(position, notes)).as(name).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({
    "C2+G2+E3+C4, 0@4 0@3 1@2 2@1, 1st, C major",
    "G2+D3+B3, 0@3 0@2 1@1, 1st, G major",
    "D2+A2+F#3+D4, 1@4 1@3 3@2 4@1, 1st, D major",
    "D2+A2+F3+D4, 1@4 1@3 2@2 4@1, 1st, D minor",
    "G2+D3+Bb3, 0@3 0@2 1@1, half, G minor",
    "D2+A2+D3+A3, 1@4 1@3 0@2 0@1, 1st, open fifths"
  })
  void celloChordsOfTheNeckPositions(String notes, String fingers, String position, String name) {
    assertThat(Chords.on("cello").in(position, notes)).as(name).contains(fingers);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Ab3+C4", "G3+Bb3", "A3+C4", "G3+C#4", "A3+C#4", "Ab3+A3"})
  void twoNotesThatOnlyTheLowestStringHasCannotSoundTogether(String notes) {
    assertThat(VIOLIN.held(notes + "/1")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"C2+E2", "D2+F#2", "C2+F2", "Eb2+F2"})
  void twoNotesThatOnlyTheLowestCelloStringHasCannotSoundTogether(String notes) {
    assertThat(Chords.on("cello").held(notes + "/1")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"G3+A3+E5", "G3+C4+G4", "A3+B3+E4+B4"})
  void aChordWithTwoSuchNotesIsImpossible(String notes) {
    assertThat(VIOLIN.held(notes + "/1")).isEmpty();
  }

  // 2@4 and 3@2 at one place, with the D string between them
  @Test
  void neighbouringFingersStopOnePlaceWithAStringBetween() {
    assertThat(VIOLIN.fingers("B3+E4+C#5")).contains("2@4 1@3 3@2");
  }

  @Test
  void onAdjacentStringsOneFingerBarsBoth() {
    assertThat(VIOLIN.fingers("B3+F#4"))
        .contains("2@4 2@3")
        .doesNotContain("2@4 3@3", "3@4 2@3", "1@4 2@3", "2@4 1@3");
  }

  @Test
  void aBarLiesUnderAHigherFingerOnTheStringBetween() {
    Chords cello = Chords.on("cello");
    assertThat(cello.fingers("Bb2+G3+C4")).contains("1@3 3@2 1@1");
    assertThat(cello.fingers("A2+E3+B3")).contains("1@3 1@2 1@1");
    // the open D string cannot sound under a bar
    assertThat(cello.fingers("Bb2+D3+C4")).doesNotContain("1@3 0@2 1@1");
    assertThat(cello.held("Bb2+C4/1pz").stream().map(Chords::fingers)).doesNotContain("1@3 1@1");
  }

  @Test
  void oneFingerCannotStopTwoPlaces() {
    assertThat(VIOLIN.fingers("A3+F4"))
        .isNotEmpty()
        .noneMatch(fingers -> fingers.matches("(.)@4 \\1@3"));
    assertThat(VIOLIN.fingers("C4+E4"))
        .isNotEmpty()
        .noneMatch(fingers -> fingers.matches("(.)@4 \\1@3"));
  }

  @Test
  void theBowPlaysThreeAdjacentStrings() {
    assertThat(VIOLIN.held("G3+D4+E5/1"))
        .isNotEmpty()
        .allMatch(grip -> grip.placements().stream().anyMatch(p -> p.string() == 2));
    assertThat(VIOLIN.held("G3+D4+E5/1pz").stream().map(Chords::fingers)).contains("0@4 0@3 0@1");
  }

  @Test
  void fiveNotesAreTooManyForFourStrings() {
    assertThat(VIOLIN.held("G3+D4+A4+E5+B5/1")).isEmpty();
    assertThat(VIOLIN.held("G3+D4+A4+E5/1")).isNotEmpty();
  }

  @Test
  void fiveStringsCanPlayFiveNotes() {
    Instruments known = Instruments.standard();
    Instrument viola =
        known.named("viola").tuned(known.tuning(known.named("viola"), "five-string"));
    assertThat(Chords.on(viola, LeftHand.MEDIUM).in("1st", "C3+G3+E4+C5+G5"))
        .contains("0@5 0@4 1@3 2@2 2@1");
  }
}
