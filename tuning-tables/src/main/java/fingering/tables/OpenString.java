package fingering.tables;

/**
 * One string of an instrument.
 *
 * @param number number counted from the highest string, which is 1, as MusicXML counts
 * @param pitch the sounding pitch of the open string, from the nut
 * @param lowest the pitch to which an extension behind the nut carries the string down; the open
 *     pitch where there is none
 */
public record OpenString(int number, Pitch pitch, Pitch lowest) {
  /** Letters from the open string to a note so many semitones above it. */
  private static final int[] LETTERS = {0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number is not 1 to 8, or the lowest pitch not within an
   *     octave below the open one
   */
  public OpenString {
    if (number < 1 || number > 8) {
      throw new FingeringException("string number " + number + " is not within 1 to 8");
    }
    if (lowest.midi() > pitch.midi() || pitch.midi() - lowest.midi() > Pitch.OCTAVE) {
      throw new FingeringException(
          "an extension leads down from "
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
   * The pitch so many semitones above the open string, spelled as the interval usually is: minor
   * and major seconds, thirds, sixths and sevenths, perfect fourths and fifths, augmented fourths.
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

  /** The name players call the string by: the letter of its open pitch. */
  public String letterName() {
    return pitch.letterName();
  }
}
