package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.tables.Instruments;
import fingering.tables.Pitch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fingers for trills and left-hand pizzicato: common practice, no source. */
class TrillFingerTest {
  /** The stopping and trilling fingers in a position with the hand closed: {@code 1-2 3-4}. */
  private static String trills(Taken hand, String note, String upper, int string, String position) {
    PitchRequest trilled =
        new PitchRequest(
            Pitch.parse(note), Optional.of(Pitch.parse(upper)), Optional.empty(), false);
    List<String> found =
        hand.fingerboard().placements(trilled).stream()
            .filter(p -> p.string() == string)
            .filter(p -> p.frame().display().equals(position))
            .filter(
                p ->
                    p.frame().shape() != Frame.Shape.EXTENDED_BACK
                        && p.frame().shape() != Frame.Shape.EXTENDED_FORWARD)
            .map(p -> p.finger().symbol() + "-" + p.trill().map(Finger::symbol).orElse("none"))
            .toList();
    return String.join(" ", found);
  }

  @ParameterizedTest
  @CsvSource({
    "B4, C5, 2, 1st, 1-2",
    "B4, C#5, 2, 1st, 1-2",
    "C5, D5, 2, 1st, 2-3",
    "E5, F5, 2, 3rd, 2-3",
    "D5, E5, 2, 3rd, 1-2"
  })
  void onTheViolinTheNextFingerTrills(
      String note, String upper, int string, String position, String fingers) {
    assertThat(trills(Taken.on("violin"), note, upper, string, position)).contains(fingers);
  }

  @Test
  void aTrillAboveTheFourthFingerHasNoFinger() {
    for (String id : List.of("violin", "viola", "cello", "bass")) {
      Fingerboard fingerboard = Taken.on(id).fingerboard();
      int lowest = fingerboard.instrument().lowest().midi();
      for (int midi = lowest; midi < lowest + 30; midi++) {
        Pitch upper = Pitches.natural(midi + 1);
        PitchRequest note =
            new PitchRequest(Pitches.natural(midi), Optional.of(upper), Optional.empty(), false);
        assertThat(fingerboard.placements(note))
            .filteredOn(p -> p.finger() == Finger.FOURTH)
            .allMatch(p -> p.trill().isEmpty());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "E5, F5, 1, half, 0-1",
    "E5, F#5, 1, 1st, 0-1",
    "E5, F#5, 1, 5th, 0-none",
    "A4, Bb4, 2, 1st, 0-1"
  })
  void theFirstFingerTrillsAboveAnOpenString(
      String note, String upper, int string, String position, String fingers) {
    assertThat(trills(Taken.on("violin"), note, upper, string, position)).isEqualTo(fingers);
  }

  // closed hand on the A string in 1st position: B C C♯ D
  @ParameterizedTest
  @CsvSource({
    "B3, C#4, 1-3",
    "C4, D4, 2-4",
    "C#4, D#4, 3-none",
    "D4, E4, 4-none",
    "B3, C4, 1-2",
    "C#4, D4, 3-4"
  })
  void theClosedHandOfTheCelloTrillsAToneWithTheFingerAfterNext(
      String note, String upper, String fingers) {
    assertThat(trills(Taken.on("cello"), note, upper, 1, "1st")).isEqualTo(fingers);
  }

  @Test
  void theFirstFingerOfTheExtendedCelloHandTrillsAToneWithTheSecond() {
    PitchRequest trilled =
        new PitchRequest(
            Pitch.parse("B3"), Optional.of(Pitch.parse("C#4")), Optional.empty(), false);
    assertThat(Taken.on("cello").fingerboard().placements(trilled))
        .filteredOn(
            p ->
                p.frame().shape() == Frame.Shape.EXTENDED_FORWARD
                    && p.string() == 1
                    && p.finger() == Finger.FIRST)
        .isNotEmpty()
        .allMatch(p -> p.trill().equals(Optional.of(Finger.SECOND)));
  }

  @ParameterizedTest
  @CsvSource({"A4, B4, T-1", "A4, Bb4, T-1", "B4, C5, 1-2", "C#5, D5, 2-3", "D5, Eb5, 3-none"})
  void theThumbCanStopTheNoteOfATrill(String note, String upper, String fingers) {
    assertThat(trills(Taken.on("cello"), note, upper, 1, "thumb")).contains(fingers);
  }

  // first, second and fourth finger are each a semitone apart
  @ParameterizedTest
  @CsvSource({"A2, Bb2, 1-2", "Bb2, B2, 2-4", "A2, B2, 1-4", "Bb2, C3, 2-none", "B2, C3, 4-none"})
  void theBassTrillsASemitoneWithTheNextFingerAndAToneWithFirstAndFourth(
      String note, String upper, String fingers) {
    assertThat(trills(Taken.on("bass"), note, upper, 1, "1st")).isEqualTo(fingers);
  }

  @ParameterizedTest
  @CsvSource({"G2, Ab2, half, 0-1", "G2, A2, half, 0-2", "G2, A2, 1st, 0-1"})
  void onAnOpenStringOfTheBassTheFingerAtTheUpperNoteTrills(
      String note, String upper, String position, String fingers) {
    assertThat(trills(Taken.on("bass"), note, upper, 1, position)).isEqualTo(fingers);
  }

  @Test
  void withFourFingersTheBassTrillsAToneWithFirstAndThird() {
    Taken four = Taken.on("bass", LeftHand.MEDIUM.withFourFingers(true));
    assertThat(trills(four, "D3", "E3", 1, "4th")).isEqualTo("1-3");
  }

  private static List<Finger> plucked(String id, String note) {
    PitchRequest plucked =
        new PitchRequest(Pitch.parse(note), Optional.empty(), Optional.empty(), true);
    return Taken.on(id).fingerboard().placements(plucked).stream()
        .map(Placement::finger)
        .distinct()
        .toList();
  }

  @Test
  void aHigherFingerIsFreeToPluck() {
    assertThat(plucked("violin", "B4"))
        .contains(Finger.FIRST, Finger.SECOND, Finger.THIRD)
        .doesNotContain(Finger.FOURTH);
    assertThat(plucked("bass", "B2"))
        .contains(Finger.FIRST, Finger.SECOND)
        .doesNotContain(Finger.FOURTH);
  }

  @Test
  void anOpenStringCanBePlucked() {
    assertThat(plucked("violin", "G3")).containsExactly(Finger.OPEN);
    assertThat(plucked("violin", "E5")).contains(Finger.OPEN);
  }

  @Test
  void everyNoteCanBePluckedByTheLeftHand() {
    for (String id : List.of("violin", "viola", "cello", "bass")) {
      var instrument = Instruments.standard().named(id);
      int top = instrument.string(1).pitch().midi() + instrument.lastSemitone();
      for (int midi = instrument.lowest().midi(); midi <= top; midi++) {
        assertThat(plucked(id, Pitches.natural(midi).toString()))
            .as("%s %s", id, midi)
            .isNotEmpty();
      }
    }
  }
}
