package fingering.page.staff;

import com.google.common.collect.ImmutableList;

/**
 * A drawn part, in pieces of a measure or some beats, all of one height, that are set in rows like
 * words.
 *
 * @param shapes the shapes that the pieces use, for a {@code defs} element
 * @param height the height of each piece in pixels
 * @param margin pixels left of a row for the head of its first piece
 * @param pieces the pieces in order
 */
public record Strip(String shapes, int height, int margin, ImmutableList<Piece> pieces) {

  /**
   * A measure or a part of one.
   *
   * @param measure index of the measure in the part
   * @param number the measure's number as printed
   * @param first whether the measure begins with it
   * @param width pixels, no less than the margin
   * @param head clef, key and positions, drawn from minus the margin to 0; for the first of a row
   * @param body the music, drawn from 0 to the width
   * @param words the same in words, for those who hear it read
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
