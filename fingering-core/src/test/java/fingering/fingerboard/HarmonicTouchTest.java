package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.base.Splitter;
import fingering.music.Harmonic;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The touch of harmonics. A string touched at k/n of its length sounds its n-th partial, with n
 * times the frequency (acoustics of a string). Pitches are those of ISO 16.
 */
class HarmonicTouchTest {
  private static List<Placement> natural(String id, String pitch) {
    return harmonic(id, Pitch.parse(pitch), Harmonic.NATURAL);
  }

  private static List<Placement> harmonic(String id, Pitch pitch, Harmonic how) {
    return Taken.on(id)
        .fingerboard()
        .placements(new PitchRequest(pitch, Optional.empty(), Optional.of(how), false));
  }

  private static List<Placement> artificial(String id, String stopped, int above, int sounds) {
    Pitch low = Pitch.parse(stopped);
    int[] letters = {0, 1, 1, 2, 2, 3, 3, 4};
    Pitch touched = Pitch.spelled(low.letterNumber() + letters[above], low.midi() + above);
    return harmonic(
        id,
        Pitches.natural(low.midi() + sounds),
        new Harmonic(Harmonic.Kind.ARTIFICIAL, Optional.of(touched), Optional.of(low)));
  }

  private static HarmonicTouch touch(Placement placement) {
    return placement.touch().orElseThrow();
  }

  // partials in semitones, and their difference from equal temperament in cents: 12·log2(n)
  @ParameterizedTest
  @CsvSource({"2, 12, 0", "3, 19, 1.96", "4, 24, 0", "5, 28, -13.69", "6, 31, 1.96", "8, 36, 0"})
  void aNaturalHarmonicSoundsAPartialOfItsString(int partial, int semitones, double cents) {
    for (Instrument instrument : Instruments.standard().all()) {
      for (OpenString string : instrument.strings()) {
        Pitch sounding = Pitches.natural(string.pitch().midi() + semitones);
        List<Placement> onString =
            harmonic(instrument.id(), sounding, Harmonic.NATURAL).stream()
                .filter(p -> p.string() == string.number())
                .toList();
        assertThat(onString)
            .as("%s on %s of the %s", sounding, string.pitch(), instrument.id())
            .isNotEmpty()
            .allMatch(p -> touch(p).partial() == partial);
        double ratio = partial * string.pitch().hertz() / sounding.hertz();
        assertThat(1200 * Math.log(ratio) / Math.log(2)).isCloseTo(cents, within(0.01));
      }
    }
  }

  @Test
  void everyNodeIsAtAFractionOfTheStringAndUnderAFinger() {
    for (Instrument instrument : Instruments.standard().all()) {
      double length = instrument.stringLength();
      for (int midi = instrument.lowest().midi(); midi < 108; midi++) {
        for (Placement p : harmonic(instrument.id(), Pitches.natural(midi), Harmonic.NATURAL)) {
          if (p.touch().isEmpty() || touch(p).finger() != p.finger()) {
            continue; // stopped, or an artificial harmonic
          }
          double part = touch(p).millimetres() / length * touch(p).partial();
          assertThat(part).isCloseTo(Math.rint(part), within(1e-9));
          assertThat(touch(p).millimetres()).isLessThan(instrument.fingerboardLength() + 3);
          double semitone =
              length * Math.pow(2, -p.semitones() / 12.0) * (1 - Math.pow(2, -1 / 12.0));
          assertThat(Math.abs(touch(p).millimetres() - p.millimetres())).isLessThan(semitone / 2);
        }
      }
    }
  }

  private static List<Long> thousandths(String id, String pitch, int string) {
    double length = Instruments.standard().named(id).stringLength();
    return natural(id, pitch).stream()
        .filter(p -> p.string() == string && p.touch().isPresent())
        .map(p -> Math.round(1000 * touch(p).millimetres() / length))
        .distinct()
        .sorted()
        .toList();
  }

  // nodes at 1/2; 1/3 and 2/3; 1/4 and 3/4; fifths of the string; 5/6 is beyond the fingerboard
  @ParameterizedTest
  @CsvSource({
    "G4, 500",
    "D5, 333 667",
    "G5, 250 750",
    "B5, 200 400 600 800",
    "D6, 167",
    "G6, 125 375 625"
  })
  void theGStringOfTheViolinHasAllNodesOnTheFingerboard(String sound, String nodes) {
    assertThat(thousandths("violin", sound, 4))
        .containsExactlyElementsOf(
            Splitter.on(' ').splitToStream(nodes).map(Long::valueOf).toList());
  }

  @ParameterizedTest
  @CsvSource({"A4, 500", "E5, 333 667", "A5, 250 750", "C#6, 200 400 600 800"})
  void theAStringOfTheCelloHasAllNodesOnTheFingerboard(String sound, String nodes) {
    assertThat(thousandths("cello", sound, 1))
        .containsExactlyElementsOf(
            Splitter.on(' ').splitToStream(nodes).map(Long::valueOf).toList());
  }

  @Test
  void thePrintedNodeIsTheOneTouched() {
    Harmonic fourth =
        new Harmonic(
            Harmonic.Kind.NATURAL, Optional.of(Pitch.parse("G4")), Optional.of(Pitch.parse("D4")));
    assertThat(harmonic("violin", Pitch.parse("D6"), fourth))
        .isNotEmpty()
        .allMatch(p -> p.string() == 3 && Math.abs(touch(p).millimetres() - 82) < 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"violin", "viola", "cello", "bass"})
  void noHarmonicIsListedTwice(String id) {
    int lowest = Instruments.standard().named(id).lowest().midi();
    for (int midi = lowest; midi < lowest + 60; midi++) {
      assertThat(harmonic(id, Pitches.natural(midi), Harmonic.NATURAL)).doesNotHaveDuplicates();
    }
  }

  // S. Adler, The Study of Orchestration, from memory: a touched fourth sounds two octaves above
  // the stopped note, a touched fifth an octave and a fifth, a touched major third two octaves and
  // a major third
  @ParameterizedTest
  @CsvSource({
    "violin, B4, 5, 24, 4, 4",
    "violin, B4, 7, 19, 3, 3",
    "violin, B4, 4, 28, 5, 5",
    "viola, E4, 5, 24, 4, 4",
    "cello, E4, 5, 24, 4, 4",
    "cello, A3, 4, 28, 5, 5",
    "bass, A3, 5, 24, 4, 4"
  })
  void anArtificialHarmonicIsTouchedAtAFractionOfTheRemainingString(
      String id, String stopped, int above, int sounds, int part, int partial) {
    double length = Instruments.standard().named(id).stringLength();
    List<Placement> found = artificial(id, stopped, above, sounds);
    assertThat(found).isNotEmpty();
    for (Placement p : found) {
      double left = length * Math.pow(2, -p.semitones() / 12.0);
      assertThat(touch(p).millimetres()).isCloseTo(length - left + left / part, within(1e-9));
      assertThat(touch(p).partial()).isEqualTo(partial);
    }
  }

  @Test
  void onTheViolinTheFirstFingerStopsAndTheFourthTouches() {
    assertThat(artificial("violin", "A4", 5, 24))
        .isNotEmpty()
        .allMatch(p -> p.finger() == Finger.FIRST && touch(p).finger() == Finger.FOURTH);
  }

  @Test
  void onTheCelloTheThumbStopsAndTheThirdFingerTouches() {
    assertThat(artificial("cello", "D4", 5, 24))
        .anyMatch(p -> p.finger() == Finger.THUMB && touch(p).finger() == Finger.THIRD)
        .allMatch(
            p ->
                (p.finger() == Finger.THUMB && touch(p).finger() == Finger.THIRD)
                    || (p.finger() == Finger.FIRST && touch(p).finger() == Finger.FOURTH));
  }

  // a quarter of the 651 mm above the semitone on a cello string is 163 mm, within the 168 mm of
  // thumb and third finger but not the 140 mm of first and fourth
  @Test
  void lowOnTheNeckOnlyThumbAndThirdFingerReachTheTouchedFourth() {
    assertThat(artificial("cello", "Bb3", 5, 24))
        .filteredOn(p -> p.string() == 1)
        .isNotEmpty()
        .allMatch(p -> p.finger() == Finger.THUMB);
  }

  // a third of the 1060 mm of the double bass, less a tone, is 315 mm
  @Test
  void aHarmonicOutOfReachIsStoppedInstead() {
    assertThat(artificial("bass", "F#1", 7, 19)).isNotEmpty().allMatch(Placement::stopped);
  }

  // B♭6 is no partial of G, D, A or E; stopped on B♭4, the touched fourth sounds two octaves higher
  // (common practice, no source)
  @Test
  void aCircleWithoutANaturalHarmonicIsATouchedFourthTwoOctavesBelow() {
    assertThat(natural("violin", "Bb6"))
        .isNotEmpty()
        .allMatch(p -> p.finger() == Finger.FIRST && touch(p).finger() == Finger.FOURTH)
        .allMatch(p -> touch(p).partial() == 4)
        .anyMatch(p -> p.string() == 2 && p.semitones() == 1);
    assertThat(natural("violin", "D6")).allMatch(p -> touch(p).finger() == p.finger());
  }

  @Test
  void aCircleAboveANoteTooLowForAHarmonicIsAnOrdinaryNote() {
    assertThat(natural("violin", "A3")).isNotEmpty().allMatch(Placement::stopped);
    assertThat(natural("cello", "C2")).isNotEmpty().allMatch(Placement::open);
  }

  @Test
  void aCircleAboveTheLowestNoteOfAFiveStringBassIsAnOpenString() {
    Instruments known = Instruments.standard();
    Instrument bass = known.named("bass");
    Fingerboard low = Fingerboard.of(bass.tuned(known.tuning(bass, "five-string-low-b")));
    PitchRequest circle =
        new PitchRequest(Pitch.parse("B0"), Optional.empty(), Optional.of(Harmonic.NATURAL), false);
    assertThat(low.placements(circle)).isNotEmpty().allMatch(Placement::open);
  }

  @Test
  void harmonicsAreSortedByStringThenFrame() {
    for (String id : List.of("violin", "cello", "bass")) {
      List<Placement> found = natural(id, "D5");
      assertThat(found).isNotEmpty();
      assertThat(found.stream().map(p -> 1000 * p.string() + p.frame().index()).toList())
          .isSorted();
    }
  }
}
