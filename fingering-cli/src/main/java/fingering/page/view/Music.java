package fingering.page.view;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * Music in pieces that wrap like words. Each carries clef, key and positions to its left, hidden by
 * the piece before it. Only the first piece of a row shows them, so every row begins like a staff,
 * at any width and without a script.
 *
 * @param shapes the shapes that the pieces use, as SVG
 * @param margin pixels to the left of a row
 * @param height the height of each piece in pixels
 * @param pieces the pieces in order
 */
public record Music(Content shapes, int margin, int height, ImmutableList<Piece> pieces) {

  /**
   * A measure, or a part of one.
   *
   * @param id the id of the measure; empty if this is not its first piece
   * @param layer its layer: each piece covers the next one
   * @param width pixels
   * @param words the music in words, for screen readers
   * @param drawing the music as SVG
   */
  public record Piece(String id, int layer, int width, String words, Content drawing) {}
}
