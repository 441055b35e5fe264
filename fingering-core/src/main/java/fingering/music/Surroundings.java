package fingering.music;

import com.google.common.primitives.ImmutableIntArray;
import com.google.common.primitives.Ints;
import java.util.List;

/**
 * The music around a moment, as far as it decides how a player takes a note: the pace of its
 * measure, the notes next to it, and the slurs. The same measure in the same place of the phrase
 * has the same surroundings, wherever it returns.
 *
 * @param paceMicros the pace of the music: the mean length in microseconds of the notes of the
 *     measure, each counted as a second at most and grace notes not at all
 * @param intervals semitones from the moment's highest note to the highest notes two moments
 *     before, one before, one after and two after, limited to an octave in either direction; {@link
 *     #NONE} where the passage or a rest of half a second ends the line
 * @param slursOn whether a slur joins the moment to the next one
 * @param slursPrinted whether any slur is printed in the passage; without one, the bowing is
 *     unknown
 */
public record Surroundings(
    long paceMicros, ImmutableIntArray intervals, boolean slursOn, boolean slursPrinted) {
  /** Stands for a neighbour that is not there. */
  public static final int NONE = 13;

  /** The largest interval, in semitones. */
  public static final int OCTAVE = 12;

  /** The surroundings of a moment that stands alone. */
  public static final Surroundings ALONE =
      new Surroundings(0, ImmutableIntArray.of(NONE, NONE, NONE, NONE), false, false);

  /** A rest of this length ends the line, in microseconds (common practice, no source). */
  private static final long END_OF_LINE_MICROS = 500_000;

  /** Longer notes count as this length in the pace, in microseconds. */
  private static final long MAX_COUNTED_MICROS = 1_000_000;

  private static final int[] NEIGHBOURS = {-2, -1, 1, 2};

  /** The surroundings of one of some moments. */
  static Surroundings of(List<Moment> moments, int m, long paceMicros, boolean slursPrinted) {
    int[] intervals = new int[NEIGHBOURS.length];
    for (int i = 0; i < intervals.length; i++) {
      intervals[i] = interval(moments, m, m + NEIGHBOURS[i]);
    }
    return new Surroundings(
        paceMicros,
        ImmutableIntArray.copyOf(intervals),
        m + 1 < moments.size() && moments.get(m + 1).slurred(),
        slursPrinted);
  }

  private static int interval(List<Moment> moments, int m, int other) {
    if (other < 0 || other >= moments.size()) {
      return NONE;
    }
    for (int i = Math.min(m, other) + 1; i <= Math.max(m, other); i++) {
      if (moments.get(i).restMicros() >= END_OF_LINE_MICROS) {
        return NONE;
      }
    }
    return Ints.constrainToRange(top(moments.get(other)) - top(moments.get(m)), -OCTAVE, OCTAVE);
  }

  private static int top(Moment moment) {
    return moment.starting().get(moment.starting().size() - 1).midi();
  }

  /** The pace of some moments of one measure, from one index to before another. */
  static long pace(List<Moment> moments, int from, int to) {
    long sum = 0;
    int counted = 0;
    for (int i = from; i < to; i++) {
      if (!moments.get(i).grace()) {
        sum += Math.min(MAX_COUNTED_MICROS, moments.get(i).soundMicros());
        counted++;
      }
    }
    return counted == 0 ? 0 : sum / counted;
  }
}
