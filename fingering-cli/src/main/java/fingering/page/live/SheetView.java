package fingering.page.live;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.page.live.StudentView.Choice;
import fingering.page.live.StudentView.Tick;

/**
 * The form of an audition sheet.
 *
 * @param address its address
 * @param seen a mark of the text that the form was filled from
 * @param title its title
 * @param notes the stopped notes in each position; empty if they differ
 * @param menus what is chosen from menus, by the name of the field
 * @param positions the positions to show
 * @param skills what else to show
 * @param pieces the pieces, in the order of the sheet
 * @param music the lessons and scores to choose from
 * @param scale the menus of a scale, by the name of the field
 * @param scales the address of the page of scales
 * @param undo whether there is a change to undo
 * @param said what was saved, or what is wrong, a sentence each
 */
public record SheetView(
    String address,
    String seen,
    String title,
    String notes,
    ImmutableMap<String, ImmutableList<Choice>> menus,
    ImmutableList<Tick> positions,
    ImmutableList<Skill> skills,
    ImmutableList<Piece> pieces,
    ImmutableList<Group> music,
    ImmutableMap<String, ImmutableList<Choice>> scale,
    String scales,
    boolean undo,
    ImmutableList<String> said) {

  /**
   * A skill to show.
   *
   * @param key its key in the sheet
   * @param value its value in the sheet
   * @param words the same in words
   */
  public record Skill(String key, String value, String words) {}

  /**
   * A piece.
   *
   * @param index its index, from 0
   * @param name what it is
   * @param about how to play it; may be empty
   * @param link where it is opened; empty if nowhere
   * @param up whether it can change places with the one before
   * @param down whether it can change places with the one after
   * @param fields what can be edited
   */
  public record Piece(
      int index,
      String name,
      String about,
      String link,
      boolean up,
      boolean down,
      ImmutableList<Field> fields) {}

  /**
   * A field of a piece.
   *
   * @param key its key in the sheet
   * @param label what is read
   * @param value what it says; may be empty
   */
  public record Field(String key, String label, String value) {}

  /**
   * Choices of a menu with a heading.
   *
   * @param name the heading
   * @param choices the choices
   */
  public record Group(String name, ImmutableList<Choice> choices) {}

  /** The choices of a menu. */
  public ImmutableList<Choice> menu(String name) {
    return menus.getOrDefault(name, ImmutableList.of());
  }
}
