package fingering.page.live;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * The page on which an excerpt is typed.
 *
 * @param address the address of the draft on the server
 * @param text the text as typed so far
 * @param name the name of its file, without ending; empty if it has none
 * @param unsaved whether the text would be lost if the program ended
 * @param folder the teacher's folder, as it is shown
 * @param drafts other drafts that are not saved
 * @param instruments the instruments to choose from
 * @param choices the menus of the fields
 * @param tools the buttons, in groups
 * @param legend how to write notes
 * @param shapes the shapes of notation, as SVG
 */
public record TypeView(
    String address,
    String text,
    String name,
    boolean unsaved,
    String folder,
    ImmutableList<HomeView.Entry> drafts,
    ImmutableList<Start> instruments,
    Choices choices,
    ImmutableList<Group> tools,
    ImmutableList<Example> legend,
    Content shapes) {

  /**
   * An instrument to type for.
   *
   * @param id its id, as in the tables of instruments
   * @param name its name
   * @param clef its usual clef, as ABC names it
   * @param strings its open strings in ABC, the notes of an empty page
   */
  public record Start(String id, String name, String clef, String strings) {}

  /**
   * What the menus offer.
   *
   * @param clefs the clefs
   * @param keys the keys, major first
   * @param meters the meters
   * @param units the values of a letter alone
   * @param beats the note values that a tempo counts
   */
  public record Choices(
      ImmutableList<Choice> clefs,
      ImmutableList<Choice> keys,
      ImmutableList<Choice> meters,
      ImmutableList<Choice> units,
      ImmutableList<Choice> beats) {}

  /**
   * A choice of a menu.
   *
   * @param value how ABC writes it
   * @param name its name
   */
  public record Choice(String value, String name) {}

  /**
   * Buttons that belong together.
   *
   * @param name what they are for
   * @param tools the buttons
   */
  public record Group(String name, ImmutableList<Tool> tools) {}

  /**
   * A button that writes a sign.
   *
   * @param label what is on it
   * @param name its name and how the sign is typed: {@code Sharp: ^ before the note}
   * @param act what it does, as the script knows it
   * @param sign what it writes
   */
  public record Tool(String label, String name, String act, String sign) {}

  /**
   * A row of the legend.
   *
   * @param typed what is typed
   * @param meaning what it means
   */
  public record Example(String typed, String meaning) {}
}
