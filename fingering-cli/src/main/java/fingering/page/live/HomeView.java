package fingering.page.live;

import com.google.common.collect.ImmutableList;

/**
 * The first page of the local server.
 *
 * @param folder the teacher's folder, as it is shown
 * @param scores the scores in it
 * @param lessons the lessons in it
 * @param problems a sentence for each file in it that cannot be opened
 */
public record HomeView(
    String folder,
    ImmutableList<Entry> scores,
    ImmutableList<Entry> lessons,
    ImmutableList<String> problems) {

  /**
   * A score or lesson to open.
   *
   * @param address where it opens
   * @param name its name
   * @param about what it is about; empty if the name says it
   */
  public record Entry(String address, String name, String about) {}

  /** Whether there is nothing to open yet. */
  public boolean empty() {
    return scores.isEmpty() && lessons.isEmpty();
  }
}
