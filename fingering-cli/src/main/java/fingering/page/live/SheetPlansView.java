package fingering.page.live;

import com.google.common.collect.ImmutableList;
import fingering.page.view.AuditionPiece;

/**
 * The plans of an audition sheet.
 *
 * @param address the address of the sheet
 * @param title its title
 * @param student for whom it is planned, and on what
 * @param answer the verdict, a sentence each
 * @param asked what is required
 * @param pieces the pieces with their music
 * @param problems why the other pieces cannot be planned
 * @param care the warnings about tempo and strain
 */
public record SheetPlansView(
    String address,
    String title,
    String student,
    ImmutableList<String> answer,
    ImmutableList<Row> asked,
    ImmutableList<Piece> pieces,
    ImmutableList<String> problems,
    String care) {

  /**
   * A skill to show.
   *
   * @param what the skill with its amount
   * @param met whether it is shown
   * @param state that it is shown or missing, in a word
   * @param shown the pieces and measures that show it
   * @param remarks what it asks, and what would show it; a sentence each
   * @param offers what it takes in one piece alone
   * @param scale a scale that would show it, as fields of a form; empty if there is none
   * @param add the words to add that scale
   */
  public record Row(
      String what,
      boolean met,
      String state,
      ImmutableList<Link> shown,
      ImmutableList<String> remarks,
      ImmutableList<String> offers,
      ImmutableList<Field> scale,
      String add) {}

  /**
   * A piece with its music.
   *
   * @param shown what is shown of it
   * @param link where it is opened; empty if nowhere
   */
  public record Piece(AuditionPiece shown, String link) {}

  /**
   * A link to a piece.
   *
   * @param id the id of its section; empty if it has none
   * @param name its number and name
   * @param where how much, and in which measures
   */
  public record Link(String id, String name, String where) {}

  /**
   * A field of a form.
   *
   * @param name its name
   * @param value its value
   */
  public record Field(String name, String value) {}
}
