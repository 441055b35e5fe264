package fingering.page.live;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * The answer to a choice: the verdict, and the lines of music whose drawing has changed.
 *
 * @param revision counts the changes of the score
 * @param remark a sentence about the request itself; empty if there is none
 * @param title the title of the music
 * @param verdict which plan to take, and why; a sentence each
 * @param about what the plans are made for
 * @param key the letter, place and name of each plan
 * @param signs what the signs in the music mean
 * @param care the warning about strain
 * @param whole whether the lines are all the music, instead of those that have changed
 * @param lines the lines of music
 */
public record AnswerView(
    int revision,
    String remark,
    String title,
    ImmutableList<String> verdict,
    ImmutableList<String> about,
    ImmutableList<String> key,
    String signs,
    String care,
    boolean whole,
    ImmutableList<Line> lines) {

  /**
   * A line of music.
   *
   * @param id names its element in the page: {@code s-} and the index of its first measure
   * @param box the view box of the picture
   * @param words the music in words, for screen readers
   * @param drawing the music as SVG
   */
  public record Line(String id, String box, String words, String drawing) {

    /** The drawing as elements. */
    public Content picture() {
      return output -> output.writeContent(drawing);
    }
  }
}
