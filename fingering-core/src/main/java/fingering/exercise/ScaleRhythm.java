package fingering.exercise;

import com.google.common.collect.ImmutableList;
import fingering.exercise.ScalePattern.ScaleNote;
import fingering.music.BeatUnit;
import fingering.musicxml.writing.PlainNote;
import java.util.ArrayList;
import java.util.List;

/**
 * The rhythm of an exercise: eighths, with tonics of two eighths if they are long. The last note
 * fills its measure.
 *
 * @param notes the notes
 * @param onsets the onset of each note, in eighths from the beginning
 * @param length eighths in a measure
 * @param slur eighths in a slur; 0 for separate bows
 */
record ScaleRhythm(
    ImmutableList<ScaleNote> notes, ImmutableList<Integer> onsets, int length, int slur) {

  /** The rhythm of some notes. */
  static ScaleRhythm of(ImmutableList<ScaleNote> notes, boolean longTonics, int length, int slur) {
    ImmutableList.Builder<Integer> onsets = ImmutableList.builder();
    int onset = 0;
    for (ScaleNote note : notes) {
      onsets.add(onset);
      onset += longTonics && note.tonic() ? 2 : 1;
    }
    return new ScaleRhythm(notes, onsets.build(), length, slur);
  }

  /** The notes of each measure. */
  List<ImmutableList<PlainNote>> measures() {
    List<ImmutableList.Builder<PlainNote>> measures = new ArrayList<>();
    for (int i = 0; i < notes.size(); i++) {
      if (onsets.get(i) / length == measures.size()) {
        measures.add(ImmutableList.builder());
      }
      measures.get(measures.size() - 1).add(note(i));
    }
    return measures.stream().map(ImmutableList.Builder::build).toList();
  }

  private PlainNote note(int i) {
    boolean before = slurred(i);
    boolean after = i + 1 < notes.size() && slurred(i + 1);
    return new PlainNote(
        notes.get(i).pitches(), value(eighths(i)), before && !after, after && !before);
  }

  private int eighths(int i) {
    return i + 1 < notes.size()
        ? onsets.get(i + 1) - onsets.get(i)
        : length - onsets.get(i) % length;
  }

  /** Whether a note is slurred to the one before; the last has a separate bow. */
  private boolean slurred(int i) {
    return slur > 0
        && i > 0
        && i + 1 < notes.size()
        && onsets.get(i) / slur == onsets.get(i - 1) / slur;
  }

  private static BeatUnit value(int eighths) {
    return switch (eighths) {
      case 1 -> new BeatUnit("eighth", 0);
      case 2 -> BeatUnit.QUARTER;
      case 4 -> new BeatUnit("half", 0);
      case 6 -> new BeatUnit("half", 1);
      case 8 -> new BeatUnit("whole", 0);
      default -> throw new IllegalStateException(eighths + " eighths are not the length of a note");
    };
  }
}
