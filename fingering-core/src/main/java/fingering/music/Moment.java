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
 * @param style how to play the notes
 * @param surroundings the music around
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
    PlayingStyle style,
    Surroundings surroundings) {

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

  /** A moment without style and surroundings. */
  public Moment(
      ImmutableList<Note> starting,
      ImmutableList<Note> held,
      long startMicros,
      long soundMicros,
      long restMicros,
      boolean slurred,
      boolean grace,
      boolean pizzicato) {
    this(
        starting,
        held,
        startMicros,
        soundMicros,
        restMicros,
        slurred,
        grace,
        pizzicato,
        PlayingStyle.PLAIN,
        Surroundings.ALONE);
  }

  /** The same moments, each with its surroundings. */
  public static ImmutableList<Moment> withSurroundings(List<Moment> moments) {
    boolean slursPrinted = moments.stream().anyMatch(Moment::slurred);
    ImmutableList.Builder<Moment> placed = ImmutableList.builder();
    int to = 0;
    for (int from = 0; from < moments.size(); from = to) {
      int measure = moments.get(from).place().measureIndex();
      while (to < moments.size() && moments.get(to).place().measureIndex() == measure) {
        to++;
      }
      long pace = Surroundings.pace(moments, from, to);
      for (int m = from; m < to; m++) {
        placed.add(
            moments.get(m).withSurroundings(Surroundings.of(moments, m, pace, slursPrinted)));
      }
    }
    return placed.build();
  }

  /** The same moment with other notes. */
  public Moment withNotes(ImmutableList<Note> newStarting, ImmutableList<Note> newHeld) {
    return new Moment(
        newStarting,
        newHeld,
        startMicros,
        soundMicros,
        restMicros,
        slurred,
        grace,
        pizzicato,
        style,
        surroundings);
  }

  /** The same moment at other times; its surroundings keep their pace. */
  public Moment withTimes(long newStartMicros, long newSoundMicros, long newRestMicros) {
    return new Moment(
        starting,
        held,
        newStartMicros,
        newSoundMicros,
        newRestMicros,
        slurred,
        grace,
        pizzicato,
        style,
        surroundings);
  }

  private Moment withSurroundings(Surroundings around) {
    return new Moment(
        starting,
        held,
        startMicros,
        soundMicros,
        restMicros,
        slurred,
        grace,
        pizzicato,
        style,
        around);
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
