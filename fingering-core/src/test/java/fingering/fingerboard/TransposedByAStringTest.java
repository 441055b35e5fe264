package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** On strings a fifth apart, a fifth higher is the same place on the next string. */
class TransposedByAStringTest {
  /** A placement without its string. */
  private record Place(
      Finger finger, int semitones, Frame frame, double millimetres, double stretch, boolean re) {}

  private static List<Place> places(
      Fingerboard fingerboard, Pitch pitch, int string, boolean wide) {
    return fingerboard.placements(PitchRequest.of(pitch), wide).stream()
        .filter(p -> p.string() == string)
        .map(
            p ->
                new Place(
                    p.finger(),
                    p.semitones(),
                    p.frame(),
                    p.millimetres(),
                    p.stretch(),
                    p.respelled()))
        .toList();
  }

  @Property(tries = 600)
  void aFifthHigherIsTheSamePlaceOnTheNextString(
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 2, max = 4) int string,
      @ForAll @IntRange(min = 0, max = 31) int semitones,
      @ForAll @IntRange(min = -1, max = 1) int letters,
      @ForAll boolean wide) {
    Instruments known = Instruments.standard();
    Instrument instrument = known.all().get(which);
    if (which == 3) {
      instrument = instrument.tuned(known.tuning(instrument, "fifths"));
    }
    Pitch plain = instrument.string(string).above(semitones);
    Pitch pitch = Pitch.spelled(plain.letterNumber() + letters, plain.midi());
    Pitch fifth = Pitch.spelled(pitch.letterNumber() + 4, pitch.midi() + 7);
    Fingerboard fingerboard = Fingerboard.of(instrument);
    assertThat(places(fingerboard, fifth, string - 1, wide))
        .as("%s on %s of the %s", pitch, string, instrument.id())
        .isEqualTo(places(fingerboard, pitch, string, wide));
  }
}
