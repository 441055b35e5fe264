package fingering.musicxml.timeline;

import java.util.regex.Pattern;

/**
 * Names the measures of a part. Programs call a measure that is not counted {@code X1}, such as a
 * second ending or the rest of a measure after a repeat. Nothing of that is printed, so it is named
 * after the last measure that is counted: {@code 24a}, {@code 24b}.
 */
public final class MeasureNames {
  private static final Pattern UNPRINTED = Pattern.compile("X\\d+");
  private static final int LETTERS = 26;

  private String counted = "";
  private int following;

  /**
   * Returns the name of the next measure.
   *
   * @param number its number in the file
   * @param implicit whether the file says that the number is not printed
   */
  public String next(String number, boolean implicit) {
    if (!implicit || !UNPRINTED.matcher(number).matches()) {
      counted = number;
      following = 0;
      return number;
    }
    return counted.isEmpty() || following == LETTERS
        ? number
        : counted + (char) ('a' + following++);
  }
}
