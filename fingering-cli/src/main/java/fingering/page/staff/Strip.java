package fingering.page.staff;

import com.google.common.collect.ImmutableList;

/**
 * A drawn part in pieces: measures, or some beats of one. All have the same height, and rows of
 * them wrap like words.
 *
 * @param shapes the shapes of notation that the pieces use, the same for every strip, for a {@code
 *     defs} element
 * @param heads the heads of rows that only this strip uses, for a {@code defs} element
 * @param height the height of each piece in pixels
 * @param margin pixels to the left of a row, for the head of its first piece
 * @param pieces the pieces in order
 */
public record Strip(
    String shapes, String heads, int height, int margin, ImmutableList<Piece> pieces) {

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

  /** This strip with other ids for its heads, for a page with several strips. */
  public Strip withIds(String prefix) {
    return new Strip(
        shapes,
        RowHeads.withIds(prefix, heads),
        height,
        margin,
        pieces.stream()
            .map(
                piece ->
                    new Piece(
                        piece.measure,
                        piece.number,
                        piece.first,
                        piece.width,
                        RowHeads.withIds(prefix, piece.head),
                        piece.body,
                        piece.words))
            .collect(ImmutableList.toImmutableList()));
  }
}
