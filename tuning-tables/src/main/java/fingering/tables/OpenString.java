package fingering.tables;

/**
 * One string of an instrument.
 *
 * @param number the number of the string, 1 for the highest, as in MusicXML
 * @param pitch the sounding pitch of the open string
 * @param lowest the lowest pitch of an extension behind the nut; the open pitch if there is none
 */
public record OpenString(int number, Pitch pitch, Pitch lowest) {
  /** Letters from the open string to a note, by semitones above the string. */
  private static final int[] LETTERS = {0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number is not 1 to 8, or the lowest pitch is above the open
   *     pitch or more than an octave below it
   */
  public OpenString {
    if (number < 1 || number > 8) {
      throw new FingeringException("string number " + number + " is not 1 to 8");
    }
    if (lowest.midi() > pitch.midi() || pitch.midi() - lowest.midi() > Pitch.OCTAVE) {
      throw new FingeringException(
          "an extension goes down from "
              + pitch.display()
              + " by an octave at most, not to "
              + lowest.display());
    }
  }

  /** A string without an extension. */
  public OpenString(int number, Pitch pitch) {
    this(number, pitch, pitch);
  }

  /**
   * The pitch that many semitones above the open string, in the usual spelling of the interval:
   * minor and major seconds, thirds, sixths and sevenths, perfect fourths and fifths, augmented
   * fourths.
   *
   * @param semitones below 0 for a pitch below the open string
   */
  public Pitch above(int semitones) {
    int letters =
        LETTERS[Math.floorMod(semitones, Pitch.OCTAVE)]
            + 7 * Math.floorDiv(semitones, Pitch.OCTAVE);
    return Pitch.spelled(pitch.letterNumber() + letters, pitch.midi() + semitones);
  }

  /** The Roman numeral of the string: I is the highest. */
  public String roman() {
    return RomanNumeral.of(number);
  }

  /** The letter name of the string, that of its open pitch. */
  public String letterName() {
    return pitch.letterName();
  }
}
