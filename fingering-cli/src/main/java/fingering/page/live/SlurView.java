package fingering.page.live;

import com.google.common.collect.ImmutableList;

/**
 * What can be done with the bowing at a note.
 *
 * @param ends where a slur from this note may end, the nearest first
 * @param slurred whether a slur can be taken off the note
 */
public record SlurView(ImmutableList<End> ends, boolean slurred) {

  /**
   * The last note of a slur.
   *
   * @param moment the index of its moment in the passage
   * @param text the number of notes, the last note and its place
   */
  public record End(int moment, String text) {}

  /**
   * A bowing that differs from the printed one.
   *
   * @param place measure and beat, by which the lesson names it
   * @param text the bowing in words
   */
  public record Chip(String place, String text) {}
}
