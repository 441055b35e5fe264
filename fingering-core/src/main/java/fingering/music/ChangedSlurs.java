package fingering.music;

import com.google.common.collect.ImmutableList;

/**
 * What {@link SlurChanges} change in a score, note by note.
 *
 * @param removed the printed slurs that are removed
 * @param added the new slurs
 */
public record ChangedSlurs(ImmutableList<Slur> removed, ImmutableList<Slur> added) {
  /** Nothing is changed. */
  public static final ChangedSlurs NONE = new ChangedSlurs(ImmutableList.of(), ImmutableList.of());

  /**
   * A slur.
   *
   * @param from the note where it starts
   * @param to the note where it ends
   * @param number its number, from 1, which differs from those of other slurs at its notes
   */
  public record Slur(NoteAddress from, NoteAddress to, int number) {
    /** Whether a note lies between its ends in the score, or is one of them. */
    public boolean covers(NoteAddress note) {
      return from.compareTo(note) <= 0 && note.compareTo(to) <= 0;
    }
  }

  /** Whether nothing is changed. */
  public boolean isEmpty() {
    return removed.isEmpty() && added.isEmpty();
  }
}
