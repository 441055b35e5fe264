package fingering.page.staff;

import com.google.common.collect.ImmutableList;

/**
 * A drawn part in pieces: measures, or some beats of one. All have the same height, and rows of
 * them wrap like words.
 *
 * @param shapes the shapes that the pieces use, for a {@code defs} element
 * @param height the height of each piece in pixels
 * @param margin pixels to the left of a row, for the head of its first piece
 * @param pieces the pieces in order
 */
public record Strip(String shapes, int height, int margin, ImmutableList<Piece> pieces) {

  /**
   * A measure or a part of one.
   *
   * @param measure index of the measure in the part
   * @param number the measure's number as printed
   * @param first whether it is the first piece of the measure
   * @param width pixels, at least the margin
   * @param head clef, key and positions, drawn from minus the margin to 0; shown at the start of a
   *     row
   * @param body the music, drawn from 0 to the width
   * @param words the music in words, for screen readers
   */
  public record Piece(
      int measure,
      String number,
      boolean first,
      int width,
      String head,
      String body,
      String words) {}
}
