package fingering.engraving.drawing;

import com.google.common.collect.ImmutableMap;
import fingering.music.NoteAddress;
import java.util.function.Predicate;

/**
 * The fingers of one plan, drawn at the notes.
 *
 * @param name the plan's name
 * @param marks the marks by note; of tied notes only the first has a mark
 */
public record Lane(String name, ImmutableMap<NoteAddress, Mark> marks) {

  /**
   * The marks of one note in a plan.
   *
   * @param finger the symbol of the finger: {@code 0} to {@code 4}, {@code T} for the thumb, with
   *     further signs for a harmonic
   * @param string the Roman numeral of the string
   * @param showString whether to print the numeral, because the string changes
   * @param position the name of the position of the hand
   * @param first whether that is the 1st position, which is not bracketed
   */
  public record Mark(
      String finger, String string, boolean showString, String position, boolean first) {}

  /** The same lane with only some of its marks. */
  public Lane only(Predicate<NoteAddress> kept) {
    ImmutableMap.Builder<NoteAddress, Mark> some = ImmutableMap.builder();
    marks.forEach(
        (address, mark) -> {
          if (kept.test(address)) {
            some.put(address, mark);
          }
        });
    return new Lane(name, some.buildOrThrow());
  }
}
