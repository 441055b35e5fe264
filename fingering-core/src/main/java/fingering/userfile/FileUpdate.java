package fingering.userfile;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.function.Function;

/**
 * The text of a user's file after a change.
 *
 * @param text the whole text
 * @param lostRemarks the remarks of the earlier text that are not in the new one
 */
public record FileUpdate(String text, ImmutableList<String> lostRemarks) {

  /**
   * Changes a text to say another value. What does not change stays as it was written, with its
   * remarks.
   *
   * @param before the text before the change
   * @param value what the new text says
   * @param parsing reads a text, or throws a {@link UserFileException}
   * @param keys the lines of each key that a value has, in their order
   * @throws UserFileException if the text before cannot be read
   */
  public static <T> FileUpdate of(
      String before,
      T value,
      Function<String, T> parsing,
      Function<T, ImmutableMap<String, String>> keys) {
    T old = parsing.apply(before);
    if (old.equals(value)) {
      return new FileUpdate(before, ImmutableList.of());
    }
    ImmutableMap<String, String> wanted = keys.apply(value);
    String edited = new TextEdit(before).edited(keys.apply(old), wanted);
    // A text with an unusual layout is written from scratch.
    String text =
        reads(edited, value, parsing) ? edited : String.join("", wanted.values().asList());
    return new FileUpdate(text, TextEdit.lost(before, text));
  }

  private static <T> boolean reads(String text, T value, Function<String, T> parsing) {
    try {
      return parsing.apply(text).equals(value);
    } catch (UserFileException e) {
      return false;
    }
  }
}
