package fingering.tables;

/** Small Roman numerals, as strings and positions are numbered with. */
public final class RomanNumeral {
  private static final String[] TENS = {"", "X", "XX", "XXX"};
  private static final String[] ONES = {"", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"};

  private RomanNumeral() {}

  /**
   * The numeral of a number from 1 to 39.
   *
   * @throws IllegalArgumentException if the number lies outside that range
   */
  public static String of(int number) {
    if (number < 1 || number > 39) {
      throw new IllegalArgumentException(number + " is not within 1 to 39");
    }
    return TENS[number / 10] + ONES[number % 10];
  }
}
