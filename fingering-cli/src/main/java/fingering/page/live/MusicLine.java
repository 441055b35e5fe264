package fingering.page.live;

import gg.jte.Content;

/**
 * A line of music that a page can replace.
 *
 * @param id names its element in the page: {@code s-} and the index of its first measure
 * @param box the view box of the picture
 * @param words the music in words, for screen readers
 * @param drawing the music as SVG
 */
public record MusicLine(String id, String box, String words, String drawing) {

  /** The drawing as elements. */
  public Content picture() {
    return output -> output.writeContent(drawing);
  }
}
