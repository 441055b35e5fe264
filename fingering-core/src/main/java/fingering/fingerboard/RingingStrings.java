package fingering.fingerboard;

import static com.google.common.collect.ImmutableList.toImmutableList;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;

/** Which open strings a stopped note rings with: those a unison or whole octaves away. */
public final class RingingStrings {
  private RingingStrings() {}

  /**
   * The open strings that ring, the nearest first; the note's own string cannot sound while it is
   * stopped.
   *
   * @param string number of the string on which the note is stopped
   * @param midi the note as it sounds
   */
  public static ImmutableList<OpenString> with(Instrument instrument, int string, int midi) {
    return instrument.strings().stream()
        .filter(other -> other.number() != string)
        .filter(other -> Math.floorMod(midi - other.pitch().midi(), Pitch.OCTAVE) == 0)
        .sorted(Comparator.comparingInt(other -> Math.abs(midi - other.pitch().midi())))
        .collect(toImmutableList());
  }
}
