package fingering.page.view;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * A handout as it is laid out. Lengths are in millimetres, as text.
 *
 * @param shapes the shapes of notation, as SVG
 * @param title the title
 * @param about lines below the title
 * @param sides the sides of paper
 * @param work what stands below the music on the last one
 * @param notes the number of lines to write on
 * @param signs what the signs in the music mean
 * @param care the warning about strain
 */
public record HandoutView(
    Content shapes,
    String title,
    ImmutableList<String> about,
    ImmutableList<Side> sides,
    Work work,
    int notes,
    String signs,
    String care) {

  /**
   * A side of paper.
   *
   * @param running the heading of a further side; empty on the first
   * @param lines the lines of music
   */
  public record Side(String running, ImmutableList<Line> lines) {}

  /**
   * A line of music.
   *
   * @param line the drawing
   * @param width its width
   * @param height its height
   */
  public record Line(Music.Line line, String width, String height) {}

  /**
   * What to do with the music.
   *
   * @param ladder the tempo ladder
   * @param how how to climb it
   * @param spots the spots
   */
  public record Work(Ladder ladder, ImmutableList<String> how, ImmutableList<Spot> spots) {}

  /**
   * A spot.
   *
   * @param measures its measures as printed
   * @param text how to practise it
   * @param lines its exercise
   */
  public record Spot(String measures, String text, ImmutableList<Line> lines) {}
}
