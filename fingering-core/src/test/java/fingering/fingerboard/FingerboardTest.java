package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FingerboardTest {
  @Property(tries = 400)
  void everyPlacementSoundsItsPitch(
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll Letter letter,
      @ForAll @IntRange(min = -2, max = 2) int alter,
      @ForAll @IntRange(min = 1, max = 6) int octave) {
    Instrument instrument = Instruments.standard().all().get(which);
    Pitch pitch = new Pitch(letter, alter, octave);
    for (Placement placement : Fingerboard.of(instrument).placements(pitch)) {
      Pitch open = instrument.string(placement.string()).pitch();
      assertThat(open.midi() + placement.semitones()).isEqualTo(pitch.midi());
      double length = instrument.stringLength();
      // L(1 − 2^(−n/12)): Mersenne's law, frequency is inverse to length; and equal temperament
      assertThat(placement.millimetres())
          .isCloseTo(length * (1 - Math.pow(2, -placement.semitones() / 12.0)), within(1e-9));
      assertThat(length / (length - placement.millimetres()))
          .isCloseTo(pitch.hertz() / open.hertz(), within(1e-9));
      assertThat(placement.open()).isEqualTo(placement.semitones() == 0);
      assertThat(placement.stretch()).isNotNegative();
    }
  }

  @Property(tries = 200)
  void noPlacementIsListedTwice(
      @ForAll @IntRange(min = 0, max = 3) int which, @ForAll @IntRange(min = 28, max = 100) int m) {
    Instrument instrument = Instruments.standard().all().get(which);
    assertThat(Fingerboard.of(instrument).placements(Pitches.natural(m))).doesNotHaveDuplicates();
  }

  // common practice, no source: the ranges of orchestral parts
  @ParameterizedTest
  @CsvSource({"violin, G3, E7", "viola, C3, A6", "cello, C2, C5", "bass, E1, A3"})
  void everyNoteOfTheRangeHasAPlacementInSharpsAndFlats(String id, String lowest, String highest) {
    Fingerboard fingerboard = Fingerboard.of(Instruments.standard().named(id));
    for (int midi = Pitch.parse(lowest).midi(); midi <= Pitch.parse(highest).midi(); midi++) {
      assertThat(fingerboard.placements(Pitches.natural(midi))).as("%s", midi).isNotEmpty();
      assertThat(fingerboard.placements(Pitches.flat(midi))).as("%s", midi).isNotEmpty();
    }
  }

  @Test
  void framesAreInOrderFromTheNutUp() {
    for (Instrument instrument : Instruments.standard().all()) {
      var frames = Fingerboard.of(instrument).frames();
      for (int i = 0; i < frames.size(); i++) {
        assertThat(frames.get(i).index()).isEqualTo(i);
        assertThat(frames.get(i).share() * instrument.stringLength())
            .isCloseTo(
                Geometry.fromNut(instrument.stringLength(), frames.get(i).first()), within(1e-9));
      }
      for (boolean thumb : new boolean[] {false, true}) {
        assertThat(
                frames.stream()
                    .filter(frame -> frame.thumb().isPresent() == thumb)
                    .map(Frame::share)
                    .toList())
            .isSorted();
      }
    }
  }

  // Pythagoras: half the string sounds the octave
  @Test
  void theOctaveIsAtHalfTheString() {
    assertThat(Geometry.fromNut(328, 12)).isCloseTo(164, within(1e-9));
    assertThat(Geometry.fromNut(690, 24)).isCloseTo(690 * 0.75, within(1e-9));
    assertThat(Geometry.fromNut(375, 0)).isZero();
  }

  // Pythagoras: two thirds of the string sound the just fifth, two cents wider than the tempered
  @Test
  void theTemperedFifthIsNearAThirdOfTheString() {
    double sounding = (375 - Geometry.fromNut(375, 7)) / 375;
    assertThat(sounding / (2 / 3.0)).isCloseTo(1, within(0.002)).isGreaterThan(1);
  }

  @Test
  void semitonesAreNarrowerUpTheString() {
    for (int n = 0; n < 24; n++) {
      double lower = Geometry.fromNut(328, n + 1) - Geometry.fromNut(328, n);
      double higher = Geometry.fromNut(328, n + 2) - Geometry.fromNut(328, n + 1);
      assertThat(higher / lower).isCloseTo(Math.pow(2, -1 / 12.0), within(1e-9));
    }
  }
}
