package fingering.page.live;

import com.google.common.collect.ImmutableList;

/**
 * What has been typed, as music.
 *
 * @param heard how much music it is and whether something needs a look, or what to do; a sentence
 * @param faults places that need a look
 * @param remarks assumptions and omissions without a place, a sentence each
 * @param measures the line and column of each measure, {@code 8:1 8:12}
 * @param misfits the indexes of measures that do not add up, {@code 3 7}
 * @param lines the lines of music
 */
public record TypedView(
    String heard,
    ImmutableList<Fault> faults,
    ImmutableList<String> remarks,
    String measures,
    String misfits,
    ImmutableList<Line> lines) {

  /**
   * A place that needs a look.
   *
   * @param line its line, from 1
   * @param column its column, from 1
   * @param sentence what is wrong, a sentence
   */
  public record Fault(int line, int column, String sentence) {}

  /**
   * A line of music.
   *
   * @param line the line
   * @param hash differs if the line looks different
   * @param known whether the page has it already, so that it is not sent again
   */
  public record Line(MusicLine line, String hash, boolean known) {}
}
