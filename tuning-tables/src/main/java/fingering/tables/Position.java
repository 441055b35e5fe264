package fingering.tables;

import com.google.common.collect.ImmutableList;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The name of a hand position: half, 1st, 2nd, one of the intermediate positions of the double bass
 * such as 2½, or thumb position.
 *
 * @param halves twice the number of the position, 1 to 47: 1 for half position, 2 for 1st, 5 for
 *     2½; empty for thumb position, which has no number
 */
public record Position(OptionalInt halves) implements Comparable<Position> {
  private static final Pattern NUMBER = Pattern.compile("(\\d{1,2})(½|\\.5| ?1/2)?(st|nd|rd|th)?");
  private static final Pattern ROMAN = Pattern.compile("([ivx]{1,5})(½|\\.5| ?1/2)?");
  private static final Pattern WITH_WORD =
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

  /** The highest position with a number is 23½. */
  private static final int MAX_HALVES = 47;

  /** The hand drawn back against the nut, below 1st position. */
  public static final Position HALF = ofHalves(1);

  /** First position. */
  public static final Position FIRST = of(1);

  /** Second position. */
  public static final Position SECOND = of(2);

  /** Third position. */
  public static final Position THIRD = of(3);

  /** Fourth position. */
  public static final Position FOURTH = of(4);

  /** Thumb position, anywhere on the string. */
  public static final Position THUMB = new Position(OptionalInt.empty());

  /**
   * Checks the component.
   *
   * @throws FingeringException if there is no position of that number
   */
  public Position {
    if (halves.isPresent() && (halves.getAsInt() < 1 || halves.getAsInt() > MAX_HALVES)) {
      throw new FingeringException("there is no position " + halves.getAsInt() + "/2");
    }
  }

  /**
   * The position with that whole number.
   *
   * @param number 1 to 23
   * @throws FingeringException if there is no such position
   */
  public static Position of(int number) {
    return ofHalves(2 * number);
  }

  /**
   * The position with that number of halves: 1 is half position, 2 is 1st, 5 is 2½.
   *
   * @param halves 1 to 47
   * @throws FingeringException if there is no such position
   */
  public static Position ofHalves(int halves) {
    return new Position(OptionalInt.of(halves));
  }

  /**
   * Both positions and all between them, the intermediate ones too, from the lowest up; empty if
   * the first is higher than the last.
   */
  public static ImmutableList<Position> range(Position from, Position to) {
    return IntStream.rangeClosed(from.rank(), to.rank())
        .mapToObj(rank -> rank > MAX_HALVES ? THUMB : ofHalves(rank))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Reads a position in digits, Roman numerals or words: {@code half}, {@code 1}, {@code 3rd},
   * {@code 2½}, {@code 2.5}, {@code III}, {@code third}, {@code thumb}; {@code position} or {@code
   * pos.} may precede or follow it. Case does not matter.
   *
   * @throws FingeringException if the text is none of these
   */
  public static Position parse(String text) {
    String word = withoutWord(text.strip().toLowerCase(Locale.ROOT));
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
      return numbered(Integer.parseInt(number.group(1)), number.group(2) != null, text);
    }
    Matcher roman = ROMAN.matcher(word);
    if (roman.matches()) {
      return numbered(roman(roman.group(1), text), roman.group(2) != null, text);
    }
    throw unknown(text);
  }

  private static String withoutWord(String text) {
    Matcher matcher = WITH_WORD.matcher(text);
    return matcher.matches() ? matcher.group(1) : text;
  }

  private static Position numbered(int number, boolean andHalf, String text) {
    int halves = 2 * number + (andHalf ? 1 : 0);
    if (halves > MAX_HALVES) {
      throw unknown(text);
    }
    return ofHalves(halves);
  }

  private static int roman(String numeral, String text) {
    for (int number = 1; number <= MAX_HALVES / 2; number++) {
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

  /**
   * The number, rounded down: 0 for half position, 2 for 2nd and 2½.
   *
   * @throws IllegalStateException for thumb position, which has no number
   */
  public int number() {
    if (halves.isEmpty()) {
      throw new IllegalStateException("thumb position has no number");
    }
    return halves.getAsInt() / 2;
  }

  /**
   * The index in the order of positions: 1 for half position, 2 for 1st, one more for each half;
   * thumb position has the highest, 48. For comparisons and array indices.
   */
  public int rank() {
    return halves.orElse(MAX_HALVES + 1);
  }

  /** The name in data and commands: {@code half}, {@code 3}, {@code 2½}, {@code thumb}. */
  @Override
  public String toString() {
    if (equals(THUMB)) {
      return "thumb";
    }
    return equals(HALF) ? "half" : number() + (intermediate() ? "½" : "");
  }

  /** The name as musicians say it: {@code half}, {@code 1st}, {@code 2½}, {@code thumb}. */
  public String display() {
    if (equals(THUMB) || intermediate()) {
      return toString();
    }
    int number = number();
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

  private boolean intermediate() {
    return halves.orElse(0) % 2 == 1;
  }

  /** Orders positions from half position up; thumb position is the highest. */
  @Override
  public int compareTo(Position other) {
    return Integer.compare(rank(), other.rank());
  }
}
