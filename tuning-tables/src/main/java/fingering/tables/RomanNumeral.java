package fingering.tables;

/** Roman numerals up to 39, for strings and positions. */
public final class RomanNumeral {
  private static final String[] TENS = {"", "X", "XX", "XXX"};
  private static final String[] ONES = {"", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"};

  private RomanNumeral() {}

  /**
   * The Roman numeral of a number.
   *
   * @param number 1 to 39
   * @throws IllegalArgumentException if the number is outside that range
   */
  public static String of(int number) {
    if (number < 1 || number > 39) {
      throw new IllegalArgumentException(number + " is not 1 to 39");
    }
    return TENS[number / 10] + ONES[number % 10];
  }
}
