package fingering.page.view;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * Music drawn twice: in long lines for screens and paper, and in short ones for phones.
 *
 * @param shapes the shapes of notation, as SVG
 * @param wide the long lines
 * @param narrow the short lines
 */
public record Music(Content shapes, ImmutableList<Line> wide, ImmutableList<Line> narrow) {

  /** The same without its long lines. */
  public Music withoutWide() {
    return new Music(shapes, ImmutableList.of(), narrow);
  }

  /** The same without its short lines. */
  public Music withoutNarrow() {
    return new Music(shapes, wide, ImmutableList.of());
  }

  /**
   * A line of music.
   *
   * @param box the view box of the picture
   * @param words the music in words, for screen readers
   * @param drawing the music as SVG
   */
  public record Line(String box, String words, Content drawing) {}
}
