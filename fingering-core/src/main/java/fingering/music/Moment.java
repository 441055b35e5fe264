package fingering.music;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Iterables;
import java.util.Comparator;
import java.util.List;

/**
 * A moment at which at least one note starts: a single note, a double stop, a chord, or a note that
 * starts while others are held.
 *
 * @param starting the notes that start at this moment, lowest first; at least one
 * @param held the notes that started earlier and still sound, lowest first
 * @param startMicros time from the start of the passage, in microseconds
 * @param soundMicros length of the longest note that starts here, in microseconds
 * @param restMicros rest between the end of the previous moment and this one, in microseconds; 0
 *     for the first moment
 * @param slurred whether a slur joins this moment to the previous one
 * @param grace whether the notes are grace notes
 * @param pizzicato whether the notes are plucked
 * @param meanNoteMicros the pace of the music: the mean length in microseconds of this moment and
 *     the six on either side, each counted as a second at most; 0 if not computed
 */
public record Moment(
    ImmutableList<Note> starting,
    ImmutableList<Note> held,
    long startMicros,
    long soundMicros,
    long restMicros,
    boolean slurred,
    boolean grace,
    boolean pizzicato,
    long meanNoteMicros) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if no note starts
   */
  public Moment {
    if (starting.isEmpty()) {
      throw new IllegalArgumentException("a moment without a note that starts");
    }
  }

  /** Moments on either side that count for the pace (common practice, no source). */
  private static final int NEIGHBOURS = 6;

  /** Longer notes count as this length in the pace, in microseconds. */
  private static final long MAX_COUNTED_MICROS = 1_000_000;

  /** A moment without a pace. */
  public Moment(
      ImmutableList<Note> starting,
      ImmutableList<Note> held,
      long startMicros,
      long soundMicros,
      long restMicros,
      boolean slurred,
      boolean grace,
      boolean pizzicato) {
    this(starting, held, startMicros, soundMicros, restMicros, slurred, grace, pizzicato, 0);
  }

  /** The same moments, each with its pace. */
  public static ImmutableList<Moment> withPace(List<Moment> moments) {
    ImmutableList.Builder<Moment> paced = ImmutableList.builder();
    for (int m = 0; m < moments.size(); m++) {
      int from = Math.max(0, m - NEIGHBOURS);
      int to = Math.min(moments.size(), m + NEIGHBOURS + 1);
      long sum = 0;
      for (int i = from; i < to; i++) {
        sum += Math.min(MAX_COUNTED_MICROS, moments.get(i).soundMicros);
      }
      Moment one = moments.get(m);
      paced.add(
          new Moment(
              one.starting,
              one.held,
              one.startMicros,
              one.soundMicros,
              one.restMicros,
              one.slurred,
              one.grace,
              one.pizzicato,
              sum / (to - from)));
    }
    return paced.build();
  }

  /** The place in the music. */
  public Place place() {
    return starting.get(0).place();
  }

  /** All notes that sound at this moment, starting or held, lowest first. */
  public ImmutableList<Note> sounding() {
    if (held.isEmpty()) {
      return starting;
    }
    return ImmutableList.sortedCopyOf(
        Comparator.comparingInt(Note::midi), Iterables.concat(starting, held));
  }
}
