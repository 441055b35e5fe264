package fingering.music;

import com.google.common.collect.ImmutableList;

/**
 * A moment at which at least one note begins: a single note, a double stop or chord, or a note that
 * begins while others are held.
 *
 * @param struck the notes that begin, lowest first; at least one
 * @param held notes begun earlier that still sound, lowest first
 * @param startMicros microseconds from the start of the passage, at the tempo asked for
 * @param soundMicros how long the longest note that begins here sounds, in microseconds
 * @param restMicros silence between the end of the moment before and this one, in microseconds; 0
 *     for the first
 * @param slurred whether a slur joins this moment to the one before
 * @param grace whether these are grace notes
 * @param pizzicato whether the string is plucked here
 */
public record Moment(
    ImmutableList<Note> struck,
    ImmutableList<Note> held,
    long startMicros,
    long soundMicros,
    long restMicros,
    boolean slurred,
    boolean grace,
    boolean pizzicato) {

  public Moment {
    if (struck.isEmpty()) {
      throw new IllegalArgumentException("a moment without a note that begins");
    }
  }

  /** The place where the notes begin. */
  public Place place() {
    return struck.get(0).place();
  }

  /** All notes the left hand holds at this moment, lowest first. */
  public ImmutableList<Note> sounding() {
    if (held.isEmpty()) {
      return struck;
    }
    return ImmutableList.sortedCopyOf(
        java.util.Comparator.comparingInt(Note::midi),
        com.google.common.collect.Iterables.concat(struck, held));
  }
}
