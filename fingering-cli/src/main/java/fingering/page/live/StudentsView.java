package fingering.page.live;

import com.google.common.collect.ImmutableList;

/**
 * The students of a folder.
 *
 * @param folder the folder, as it is shown
 * @param students a line for each student
 * @param problems a sentence for each file that cannot be read
 */
public record StudentsView(
    String folder, ImmutableList<Line> students, ImmutableList<String> problems) {

  /**
   * A student.
   *
   * @param address where the student is changed
   * @param name the name
   * @param about instrument, level and what is learned
   */
  public record Line(String address, String name, String about) {}
}
