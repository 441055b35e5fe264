package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.Harmonic;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Note;
import fingering.tables.Pitch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Artificial harmonics held alone, together, and beside an open string: common practice, no source.
 */
class HarmonicGripTest {
  /** The grips of an event in which all stopped notes are artificial harmonics at the fourth. */
  private static List<String> touched(String id, String event, String open) {
    Moment plain = Music.on(id).notes(event + "/1").moments().get(0);
    ImmutableList<Note> notes =
        plain.starting().stream()
            .map(note -> note.sounding().toString().equals(open) ? note : touched(note))
            .collect(ImmutableList.toImmutableList());
    Moment moment =
        new Moment(notes, ImmutableList.of(), 0, plain.soundMicros(), 0, false, false, false);
    return new GripFinder(Taken.on(id).fingerboard())
        .grips(moment).stream().filter(grip -> !grip.divided()).map(Chords::fingers).toList();
  }

  private static Note touched(Note note) {
    Pitch stopped = note.sounding();
    Pitch fourth = Pitch.spelled(stopped.letterNumber() + 3, stopped.midi() + 5);
    return new Note(
        note.address(),
        note.place(),
        note.written(),
        stopped.plusOctaves(2),
        note.start(),
        note.length(),
        note.marks()
            .withHarmonic(
                new Harmonic(Harmonic.Kind.ARTIFICIAL, Optional.of(fourth), Optional.of(stopped))));
  }

  @ParameterizedTest
  @CsvSource({"violin, A4, 1@3", "cello, E4, T@1", "cello, Bb3, T@1", "cello, D3, T@3"})
  void oneHandStopsAndTouches(String id, String stopped, String fingers) {
    assertThat(touched(id, stopped, "")).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({"violin, A4+E5, 1@3 1@2", "cello, E4+B4, T@2 T@1", "cello, G3+D4, T@2 T@1"})
  void twoArtificialHarmonicsAFifthApartFitOneHand(String id, String stopped, String fingers) {
    assertThat(touched(id, stopped, "")).contains(fingers);
  }

  @ParameterizedTest
  @CsvSource({"violin, D4+B4, D4, 0@3 1@2", "cello, D3+C4, D3, 0@2 T@1"})
  void anArtificialHarmonicSoundsWithAnOpenString(
      String id, String notes, String open, String fingers) {
    assertThat(touched(id, notes, open)).contains(fingers);
  }
}
