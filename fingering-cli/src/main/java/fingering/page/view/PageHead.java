package fingering.page.view;

import com.google.common.collect.ImmutableList;

/**
 * The head of a page.
 *
 * @param title the title, not empty
 * @param answer what the reader wants to know first, a sentence each; may be empty
 * @param about the lines below it
 * @param skip the link for keyboard users that skips the head
 * @param sections links to the sections of the page
 */
public record PageHead(
    String title,
    ImmutableList<String> answer,
    ImmutableList<String> about,
    Section skip,
    ImmutableList<Section> sections) {

  /**
   * A link to a section.
   *
   * @param id its id
   * @param name the text of the link
   */
  public record Section(String id, String name) {}
}
