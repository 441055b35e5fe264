package fingering.page.live;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * The page that shows one excerpt for several students.
 *
 * @param address its address
 * @param score the address of the score
 * @param about the part and the measures
 * @param students the students to tick
 * @param others a sentence about students of other instruments; empty if there are none
 * @param shapes the shapes of notation, as SVG
 */
public record BesideView(
    String address,
    String score,
    String about,
    ImmutableList<StudentView.Tick> students,
    String others,
    Content shapes) {

  /**
   * The plans of the students that are ticked.
   *
   * @param remark how far the plans differ, or what to do; a sentence each
   * @param students a row for each student
   * @param music the measures in which the plans differ
   * @param signs what the signs in the music mean; empty if there is none
   */
  public record Rows(
      ImmutableList<String> remark,
      ImmutableList<Row> students,
      ImmutableList<Excerpt> music,
      String signs) {}

  /**
   * The plan of a student.
   *
   * @param name the name of the student
   * @param verdict which plan to take
   * @param figures its shifts, string crossings and fourth fingers, and its comfortable tempo
   * @param fresh what is new to the student; empty if nothing is known about that
   */
  public record Row(String name, String verdict, String figures, String fresh) {}

  /**
   * A few measures, with a row of fingers for each student.
   *
   * @param box the view box of the picture
   * @param width its width in pixels, as text
   * @param words the music in words, for screen readers
   * @param drawing the picture
   */
  public record Excerpt(String box, String width, String words, Content drawing) {}
}
