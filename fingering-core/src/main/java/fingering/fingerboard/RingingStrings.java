package fingering.fingerboard;

import static com.google.common.collect.ImmutableList.toImmutableList;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;

/** Open strings that ring in sympathy with a stopped note, at the unison or whole octaves. */
public final class RingingStrings {
  private RingingStrings() {}

  /**
   * The open strings that ring with a note, nearest first. The string of the note itself does not
   * ring, because it is stopped.
   *
   * @param string number of the string of the note
   * @param midi MIDI number of the sounding note
   */
  public static ImmutableList<OpenString> with(Instrument instrument, int string, int midi) {
    return instrument.strings().stream()
        .filter(other -> other.number() != string)
        .filter(other -> Math.floorMod(midi - other.pitch().midi(), Pitch.OCTAVE) == 0)
        .sorted(Comparator.comparingInt(other -> Math.abs(midi - other.pitch().midi())))
        .collect(toImmutableList());
  }
}
