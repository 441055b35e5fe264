package fingering.music;

import com.google.common.collect.ImmutableList;
import java.util.List;

/**
 * A moment at which at least one note begins: a single note, a double stop or chord, or a note that
 * begins while others are held.
 *
 * @param starting the notes that begin, lowest first; at least one
 * @param held notes begun earlier that still sound, lowest first
 * @param startMicros microseconds from the start of the passage, at the tempo asked for
 * @param soundMicros how long the longest note that begins here sounds, in microseconds
 * @param restMicros silence between the end of the moment before and this one, in microseconds; 0
 *     for the first
 * @param slurred whether a slur joins this moment to the one before
 * @param grace whether these are grace notes
 * @param pizzicato whether the string is plucked here
 * @param meanNoteMicros how slowly the music goes around here: the mean length in microseconds of
 *     this moment and the six on either side, none counted for more than a second; 0 where not
 *     reckoned
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
   * @throws IllegalArgumentException if no note begins
   */
  public Moment {
    if (starting.isEmpty()) {
      throw new IllegalArgumentException("a moment without a note that begins");
    }
  }

  /** Moments on either side that tell the pace (common practice, no source). */
  private static final int AROUND = 6;

  /** No note counts for more than this in the pace, in microseconds. */
  private static final long LONGEST = 1_000_000;

  /** A moment whose pace is not reckoned. */
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

  /** The same moments, each with the pace of the music around it. */
  public static ImmutableList<Moment> paced(List<Moment> moments) {
    ImmutableList.Builder<Moment> paced = ImmutableList.builder();
    for (int m = 0; m < moments.size(); m++) {
      int from = Math.max(0, m - AROUND);
      int to = Math.min(moments.size(), m + AROUND + 1);
      long sum = 0;
      for (int i = from; i < to; i++) {
        sum += Math.min(LONGEST, moments.get(i).soundMicros);
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

  /** The place where the notes begin. */
  public Place place() {
    return starting.get(0).place();
  }

  /** All notes the left hand holds at this moment, lowest first. */
  public ImmutableList<Note> sounding() {
    if (held.isEmpty()) {
      return starting;
    }
    return ImmutableList.sortedCopyOf(
        java.util.Comparator.comparingInt(Note::midi),
        com.google.common.collect.Iterables.concat(starting, held));
  }
}
