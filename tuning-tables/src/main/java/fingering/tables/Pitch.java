package fingering.tables;

import com.google.common.base.CharMatcher;
import com.google.common.collect.ImmutableList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A spelled pitch: a letter, its alteration and its octave in scientific pitch notation (middle C
 * is C4). Two spellings of one key of the keyboard, G♯4 and A♭4, are different pitches with the
 * same {@link #midi() MIDI number}.
 *
 * @param letter the note letter
 * @param alter semitones by which the letter is raised (sharps) or lowered (flats), -3 to 3
 * @param octave octave number, -1 to 10
 */
public record Pitch(Letter letter, int alter, int octave) {
  private static final Pattern SPELLING = Pattern.compile("([A-Ga-g])([#♯xb♭]{0,3})(-?\\d{1,2})");
  private static final CharMatcher FLATS = CharMatcher.anyOf("b♭");

  private static final ImmutableList<Letter> LETTERS = ImmutableList.copyOf(Letter.values());

  /** Semitones in an octave, equal temperament. */
  public static final int OCTAVE = 12;

  /** MIDI number of the tuning note A4. */
  private static final int A4_MIDI = 69;

  /** Frequency of A4 in hertz (ISO 16:1975). */
  private static final double A4_HERTZ = 440.0;

  /**
   * Checks the components.
   *
   * @throws FingeringException if the alteration is not within -3 to 3 semitones, or the octave not
   *     within -1 to 10
   */
  public Pitch {
    if (alter < -3 || alter > 3) {
      throw new FingeringException("alteration " + alter + " is not within -3 to 3 semitones");
    }
    if (octave < -1 || octave > 10) {
      throw new FingeringException("octave " + octave + " is not within -1 to 10");
    }
  }

  /**
   * Reads a pitch such as {@code C4}, {@code F#5}, {@code B♭3} or {@code Ebb2}.
   *
   * @throws FingeringException if the text is not a pitch
   */
  public static Pitch parse(String text) {
    Matcher matcher = SPELLING.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' is not a pitch; write letter, accidental and octave, such as F#4 or Bb3");
    }
    int alter = 0;
    for (char sign : matcher.group(2).toCharArray()) {
      alter += sign == 'x' ? 2 : FLATS.matches(sign) ? -1 : 1;
    }
    return new Pitch(
        Letter.valueOf(matcher.group(1).toUpperCase(java.util.Locale.ROOT)),
        alter,
        Integer.parseInt(matcher.group(3)));
  }

  /** The natural note of that {@link #letterNumber() letter number}. */
  public static Pitch natural(int letterNumber) {
    Letter letter = LETTERS.get(Math.floorMod(letterNumber, LETTERS.size()));
    return new Pitch(letter, 0, Math.floorDiv(letterNumber, LETTERS.size()));
  }

  /**
   * The pitch of that {@link #letterNumber() letter number} altered to sound as that MIDI number.
   *
   * @throws FingeringException if that takes more than three sharps or flats
   */
  public static Pitch spelled(int letterNumber, int midi) {
    Pitch natural = natural(letterNumber);
    return new Pitch(natural.letter(), midi - natural.midi(), natural.octave());
  }

  /** The MIDI note number: middle C is 60 and each semitone counts one. */
  public int midi() {
    return OCTAVE * (octave + 1) + letter.semitones() + alter;
  }

  /** The frequency in hertz, equal temperament with A4 = 440 Hz (ISO 16:1975). */
  public double hertz() {
    return A4_HERTZ * Math.pow(2, (midi() - A4_MIDI) / (double) OCTAVE);
  }

  /** Letters counted upward from C0, so that neighbouring letters differ by one. */
  public int letterNumber() {
    return LETTERS.size() * octave + letter.steps();
  }

  /** The same spelling some octaves higher, or lower where {@code octaves} is negative. */
  public Pitch plusOctaves(int octaves) {
    return new Pitch(letter, alter, octave + octaves);
  }

  /** The spelling in plain ASCII that {@link #parse} reads back: {@code C4}, {@code F#5}. */
  @Override
  public String toString() {
    return letter + (alter < 0 ? "b".repeat(-alter) : "#".repeat(alter)) + octave;
  }

  /** The spelling as musicians read it: {@code F♯5}, {@code B♭3}. */
  public String display() {
    return letterName() + octave;
  }

  /** The spelling without its octave: {@code F♯}, {@code B♭}. */
  public String letterName() {
    return letter + (alter < 0 ? "♭".repeat(-alter) : "♯".repeat(alter));
  }
}
