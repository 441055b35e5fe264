package fingering.tables;

import com.google.common.collect.ImmutableList;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a hand position: half, 1st, 2nd, the in-between positions of the double bass such as
 * 2½, and thumb position.
 *
 * @param halves twice the number of the position: 1 for half position, 2 for 1st, 5 for 2½
 */
public record Position(int halves) implements Comparable<Position> {
  private static final Pattern NUMBER = Pattern.compile("(\\d{1,2})(½|\\.5| ?1/2)?(st|nd|rd|th)?");
  private static final Pattern ROMAN = Pattern.compile("([ivx]{1,5})(½|\\.5| ?1/2)?");
  private static final Pattern SAID =
      Pattern.compile("^(?:pos(?:ition|\\.)? )?(.+?)(?: pos(?:ition|\\.)?)?$");
  private static final ImmutableList<String> ORDINALS =
      ImmutableList.of(
          "first",
          "second",
          "third",
          "fourth",
          "fifth",
          "sixth",
          "seventh",
          "eighth",
          "ninth",
          "tenth",
          "eleventh",
          "twelfth",
          "thirteenth");
  private static final int HIGHEST = 48;

  /** The hand drawn back against the nut, below 1st position. */
  public static final Position HALF = new Position(1);

  /** First position. */
  public static final Position FIRST = of(1);

  /** Second position. */
  public static final Position SECOND = of(2);

  /** Third position. */
  public static final Position THIRD = of(3);

  /** Fourth position. */
  public static final Position FOURTH = of(4);

  /** Thumb position, wherever on the string the thumb lies. */
  public static final Position THUMB = new Position(HIGHEST);

  /**
   * Checks the components.
   *
   * @throws FingeringException if there is no such position
   */
  public Position {
    if (halves < 1 || halves > HIGHEST) {
      throw new FingeringException("there is no position " + halves + "/2");
    }
  }

  /** The position of that number, from 1. */
  public static Position of(int number) {
    return new Position(2 * number);
  }

  /**
   * Reads a position in digits, Roman numerals or words: {@code half}, {@code 1}, {@code 3rd},
   * {@code 2½}, {@code 2.5}, {@code III}, {@code third}, {@code thumb}; {@code position} or {@code
   * pos.} may stand before or behind it. Case does not matter.
   *
   * @throws FingeringException if the text is none of these
   */
  public static Position parse(String text) {
    String word = bare(text.strip().toLowerCase(Locale.ROOT));
    int ordinal = ORDINALS.indexOf(word);
    if (ordinal >= 0) {
      return of(ordinal + 1);
    }
    switch (word) {
      case "half", "½", "1/2", "0.5":
        return HALF;
      case "thumb", "t":
        return THUMB;
      default:
        break;
    }
    Matcher number = NUMBER.matcher(word);
    if (number.matches() && Integer.parseInt(number.group(1)) >= 1) {
      return between(Integer.parseInt(number.group(1)), number.group(2) != null, text);
    }
    Matcher roman = ROMAN.matcher(word);
    if (roman.matches()) {
      return between(roman(roman.group(1), text), roman.group(2) != null, text);
    }
    throw unknown(text);
  }

  private static String bare(String said) {
    Matcher matcher = SAID.matcher(said);
    return matcher.matches() ? matcher.group(1) : said;
  }

  private static Position between(int number, boolean andHalf, String text) {
    int halves = 2 * number + (andHalf ? 1 : 0);
    if (halves >= HIGHEST) {
      throw unknown(text);
    }
    return new Position(halves);
  }

  private static int roman(String numeral, String text) {
    for (int number = 1; number < HIGHEST / 2; number++) {
      if (RomanNumeral.of(number).equalsIgnoreCase(numeral)) {
        return number;
      }
    }
    throw unknown(text);
  }

  private static FingeringException unknown(String text) {
    return new FingeringException(
        "'"
            + text
            + "' is not a position; write half, 1, 2½, 3 and so on (3rd, III and third too), or thumb");
  }

  /** The name as data and commands carry it: {@code half}, {@code 3}, {@code 2½}, {@code thumb}. */
  @Override
  public String toString() {
    if (equals(THUMB)) {
      return "thumb";
    }
    if (equals(HALF)) {
      return "half";
    }
    return halves / 2 + (halves % 2 == 1 ? "½" : "");
  }

  /** The name as musicians say it: {@code half}, {@code 1st}, {@code 2½}, {@code thumb}. */
  public String display() {
    if (equals(THUMB) || halves % 2 == 1) {
      return toString();
    }
    int number = halves / 2;
    String ending =
        number % 100 >= 11 && number % 100 <= 13
            ? "th"
            : switch (number % 10) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            };
    return number + ending;
  }

  @Override
  public int compareTo(Position other) {
    return Integer.compare(halves, other.halves);
  }
}
