package fingering.tables;

/**
 * One string of an instrument.
 *
 * @param number number counted from the highest string, which is 1, as MusicXML counts
 * @param pitch the sounding pitch of the open string
 */
public record OpenString(int number, Pitch pitch) {
  public OpenString {
    if (number < 1 || number > 8) {
      throw new IllegalArgumentException("string number " + number + " is not within 1 to 8");
    }
  }

  /** The Roman numeral of the string: I is the highest. */
  public String roman() {
    return RomanNumeral.of(number);
  }

  /** The name players call the string by: the letter of its open pitch. */
  public String letterName() {
    return pitch.letter() + (pitch.alter() < 0 ? "♭" : pitch.alter() > 0 ? "♯" : "");
  }
}
