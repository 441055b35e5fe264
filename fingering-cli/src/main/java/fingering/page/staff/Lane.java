package fingering.page.staff;

import com.google.common.collect.ImmutableMap;
import fingering.music.NoteAddress;
import java.util.Optional;

/**
 * The marks of one plan, to be drawn along the staff.
 *
 * @param key the letter of the plan
 * @param name the plan's name
 * @param marks the marks by note; of tied notes only the first has a mark
 */
public record Lane(String key, String name, ImmutableMap<NoteAddress, Mark> marks) {

  /**
   * The marks of one note in a plan.
   *
   * @param finger the symbol of the finger
   * @param string the Roman numeral of the string
   * @param showString whether to print the numeral, because the string changes
   * @param position the name of the position the hand is in
   * @param shift the direction of the shift to this note; empty if there is none
   * @param differs whether another plan plays the note differently
   */
  public record Mark(
      String finger,
      String string,
      boolean showString,
      String position,
      Optional<Direction> shift,
      boolean differs) {}

  /** The direction of a shift. */
  public enum Direction {
    UP,
    DOWN
  }
}
