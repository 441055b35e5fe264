package fingering.page.staff;

import com.google.common.collect.ImmutableMap;
import fingering.music.NoteAddress;
import java.util.Optional;

/**
 * The marks of one plan, to be drawn along the staff.
 *
 * @param key the letter that stands for the plan
 * @param name the plan's name
 * @param marks the marks by the notes they belong to; tied notes have one at the first
 */
public record Lane(String key, String name, ImmutableMap<NoteAddress, Mark> marks) {

  /**
   * What a plan says of one note.
   *
   * @param finger the finger's sign
   * @param string the string's numeral
   * @param stringTold whether the numeral is to be written, since the string changes
   * @param position the name of the position the hand is in
   * @param shift which way the hand shifts to this note; empty where it stays
   * @param differs whether another plan takes the note otherwise
   */
  public record Mark(
      String finger,
      String string,
      boolean stringTold,
      String position,
      Optional<Way> shift,
      boolean differs) {}

  /** The way of a shift. */
  public enum Way {
    UP,
    DOWN
  }
}
