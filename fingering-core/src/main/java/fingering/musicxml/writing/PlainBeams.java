package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.BeamValue;

/**
 * Beams eighths: by half measures in 4/4, by dotted quarters in 6/8 and similar meters, otherwise
 * by quarters (common practice). Shorter notes are left to the notation program.
 */
final class PlainBeams {
  private static final BigFraction EIGHTH = BigFraction.of(1, 2);
  private static final int UNBEAMED = -1;

  private PlainBeams() {}

  /** Returns the beam of each note of a measure; empty for notes without a beam. */
  static ImmutableList<Optional<BeamValue>> of(
      ImmutableList<PlainNote> notes, int beats, int beatType) {
    List<Integer> groups = groups(notes, length(beats, beatType));
    ImmutableList.Builder<Optional<BeamValue>> beams = ImmutableList.builder();
    for (int i = 0; i < groups.size(); i++) {
      boolean before = i > 0 && joined(groups.get(i - 1), groups.get(i));
      boolean after = i + 1 < groups.size() && joined(groups.get(i), groups.get(i + 1));
      beams.add(
          before
              ? Optional.of(after ? BeamValue.CONTINUE : BeamValue.END)
              : after ? Optional.of(BeamValue.BEGIN) : Optional.empty());
    }
    return beams.build();
  }

  private static boolean joined(int group, int next) {
    return group != UNBEAMED && group == next;
  }

  /** The number of the beam group in which each note begins, counted through the measure. */
  private static List<Integer> groups(ImmutableList<PlainNote> notes, BigFraction length) {
    List<Integer> groups = new ArrayList<>();
    BigFraction onset = BigFraction.ZERO;
    for (PlainNote note : notes) {
      boolean beamed = !note.pitches().isEmpty() && note.value().quarters().equals(EIGHTH);
      groups.add(beamed ? onset.divide(length).intValue() : UNBEAMED);
      onset = onset.add(note.value().quarters());
    }
    return groups;
  }

  private static BigFraction length(int beats, int beatType) {
    if (beatType == 8 && beats % 3 == 0) {
      return BigFraction.of(3, 2);
    }
    return beats == 4 && beatType == 4 ? BigFraction.of(2) : BigFraction.ONE;
  }
}
