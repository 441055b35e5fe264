package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Placement;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import fingering.tables.Position;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The guide note of a shift, by key and arriving finger (common practice, no source). */
class GuideNoteTest {
  private static Placement placement(
      Instrument instrument, String pitch, int string, int finger, int position) {
    return Fingerboard.of(instrument).placements(Pitch.parse(pitch)).stream()
        .filter(one -> one.string() == string && one.finger().number() == finger)
        .filter(one -> one.frame().position().equals(Position.of(position)))
        .findFirst()
        .orElseThrow();
  }

  /** From the first finger in 3rd position, G4 on the D string of the violin, back to 1st. */
  @ParameterizedTest
  @CsvSource({
    "-3, F4, 2, Eb4",
    "-3, G4, 3, Eb4",
    "0, F4, 2, E4",
    "4, F#4, 2, E4",
    // An augmented second is more than neighbouring fingers reach without a stretch.
    "-3, F#4, 2, E4",
    "-5, Gb4, 3, Eb4"
  })
  void violinSlidesToTheNoteOfTheKey(int fifths, String arrival, int finger, String guide) {
    Instrument violin = Instruments.standard().named("violin");
    Placement left = placement(violin, "G4", 3, 1, 3);
    Placement reached = placement(violin, arrival, 3, finger, 1);
    assertThat(new GuideNote(left, reached, violin.string(3), fifths).pitch())
        .isEqualTo(Pitch.parse(guide));
  }

  /** From the fourth finger in 1st position, D4 on the A string of the cello, up to 2nd and on. */
  @ParameterizedTest
  @CsvSource({"-3, Eb4", "4, D#4", "0, D#4"})
  void celloKeepsTheDistanceOfTheFingersAndSpellsByTheKey(int fifths, String guide) {
    Instrument cello = Instruments.standard().named("cello");
    Placement left = placement(cello, "D4", 1, 4, 1);
    Placement reached =
        Fingerboard.of(cello).placements(Pitch.parse("C4")).stream()
            .filter(one -> one.string() == 1 && one.finger().number() == 1)
            .filter(one -> one.frame().first() == left.frame().first() + 1)
            .findFirst()
            .orElseThrow();
    assertThat(new GuideNote(left, reached, cello.string(1), fifths).pitch())
        .isEqualTo(Pitch.parse(guide));
  }
}
