package fingering.page.live;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.page.live.StudentView.Choice;
import gg.jte.Content;

/**
 * The page of scales.
 *
 * @param menus what is chosen from menus, by the name of the field
 * @param sheets the audition sheets that a scale can be added to
 */
public record ScalesView(
    ImmutableMap<String, ImmutableList<Choice>> menus, ImmutableList<Choice> sheets) {

  /** The choices of a menu. */
  public ImmutableList<Choice> menu(String name) {
    return menus.getOrDefault(name, ImmutableList.of());
  }

  /**
   * A scale with its fingerings.
   *
   * @param title its name
   * @param student for whom it is planned
   * @param ways the fingerings to choose from
   * @param lines what to know about the chosen one
   * @param music the music with the chosen one
   * @param signs what the signs in it mean
   * @param care the warning about strain
   */
  public record Ways(
      String title,
      String student,
      ImmutableList<Way> ways,
      ImmutableList<String> lines,
      Content music,
      String signs,
      String care) {}

  /**
   * A fingering.
   *
   * @param value what is sent
   * @param name where it is played
   * @param about its shifts, string crossings and fourth fingers
   * @param chosen whether it is shown
   */
  public record Way(String value, String name, String about, boolean chosen) {}
}
