package fingering.exercise;

import com.google.common.collect.ImmutableList;
import fingering.exercise.ScalePattern.Stroke;
import fingering.music.BeatUnit;
import fingering.musicxml.writing.PlainNote;
import java.util.ArrayList;
import java.util.List;

/**
 * Strokes in time: in eighths, the tonics held for two where they are held, and the last for the
 * rest of its measure.
 *
 * @param contexts what is struck
 * @param onsets when, in eighths from the beginning
 * @param length eighths in a measure
 * @param slur eighths to a bow; 0 for separate bows
 */
record ScaleRhythm(
    ImmutableList<Stroke> contexts, ImmutableList<Integer> onsets, int length, int slur) {

  /** Those strokes in time. */
  static ScaleRhythm of(ImmutableList<Stroke> contexts, boolean held, int length, int slur) {
    ImmutableList.Builder<Integer> onsets = ImmutableList.builder();
    int onset = 0;
    for (Stroke context : contexts) {
      onsets.add(onset);
      onset += held && context.tonic() ? 2 : 1;
    }
    return new ScaleRhythm(contexts, onsets.build(), length, slur);
  }

  /** The notes of each measure. */
  List<ImmutableList<PlainNote>> measures() {
    List<ImmutableList.Builder<PlainNote>> measures = new ArrayList<>();
    for (int i = 0; i < contexts.size(); i++) {
      if (onsets.get(i) / length == measures.size()) {
        measures.add(ImmutableList.builder());
      }
      measures.get(measures.size() - 1).add(note(i));
    }
    return measures.stream().map(ImmutableList.Builder::build).toList();
  }

  private PlainNote note(int i) {
    boolean before = slurred(i);
    boolean after = i + 1 < contexts.size() && slurred(i + 1);
    return new PlainNote(
        contexts.get(i).pitches(), value(eighths(i)), before && !after, after && !before);
  }

  private int eighths(int i) {
    return i + 1 < contexts.size()
        ? onsets.get(i + 1) - onsets.get(i)
        : length - onsets.get(i) % length;
  }

  /** Whether a stroke is in one bow with that before; the last has a bow of its own. */
  private boolean slurred(int i) {
    return slur > 0
        && i > 0
        && i + 1 < contexts.size()
        && onsets.get(i) / slur == onsets.get(i - 1) / slur;
  }

  private static BeatUnit value(int eighths) {
    return switch (eighths) {
      case 1 -> new BeatUnit("eighth", 0);
      case 2 -> BeatUnit.QUARTER;
      case 4 -> new BeatUnit("half", 0);
      case 6 -> new BeatUnit("half", 1);
      case 8 -> new BeatUnit("whole", 0);
      default -> throw new IllegalStateException(eighths + " eighths are no note");
    };
  }
}
