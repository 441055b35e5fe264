package fingering.page.live;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;

/**
 * The form of a student.
 *
 * @param title the title of the page
 * @param address the address that the form is sent to
 * @param seen a mark of the text that the form was filled from; empty for a new student
 * @param fields what is typed, by the name of the field
 * @param errors a sentence for each field that cannot be used, by its name
 * @param sizes the usual sizes of the instrument
 * @param choices what is chosen from a menu
 * @param groups what is ticked
 * @param said what was saved, a sentence each
 */
public record StudentView(
    String title,
    String address,
    String seen,
    ImmutableMap<String, String> fields,
    ImmutableMap<String, String> errors,
    ImmutableList<String> sizes,
    Choices choices,
    ImmutableList<Group> groups,
    ImmutableList<String> said) {

  /**
   * The menus.
   *
   * @param instruments the instruments
   * @param levels the levels
   * @param hands the sizes of the hand
   */
  public record Choices(
      ImmutableList<Choice> instruments,
      ImmutableList<Choice> levels,
      ImmutableList<Choice> hands) {}

  /**
   * A choice of a menu.
   *
   * @param value what is sent
   * @param name what is read
   * @param chosen whether it is chosen
   */
  public record Choice(String value, String name, boolean chosen) {}

  /**
   * Things to tick.
   *
   * @param id its name among the errors
   * @param legend what is ticked
   * @param about what it does to the plans
   * @param ticks the things
   */
  public record Group(String id, String legend, String about, ImmutableList<Tick> ticks) {}

  /**
   * A thing to tick.
   *
   * @param field the name of the field
   * @param name what is read
   * @param ticked whether it is ticked
   */
  public record Tick(String field, String name, boolean ticked) {}

  /** Whether the student is new. */
  public boolean fresh() {
    return seen.isEmpty();
  }

  /** What is typed in a field; empty if nothing is. */
  public String typed(String field) {
    return fields.getOrDefault(field, "");
  }

  /** What is wrong with a field; empty if nothing is. */
  public String error(String field) {
    return errors.getOrDefault(field, "");
  }
}
