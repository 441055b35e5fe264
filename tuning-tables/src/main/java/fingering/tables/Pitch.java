package fingering.tables;

import com.google.common.base.CharMatcher;
import com.google.common.collect.ImmutableList;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A spelled pitch in scientific pitch notation, in which middle C is C4. Enharmonic spellings, such
 * as G♯4 and A♭4, are different pitches with the same {@link #midi() MIDI number}.
 *
 * @param letter the letter
 * @param alter semitones by which the letter is raised, negative if lowered, -3 to 3
 * @param octave the octave number, -1 to 10
 */
public record Pitch(Letter letter, int alter, int octave) {
  private static final Pattern SPELLING = Pattern.compile("([A-Ga-g])([#♯xb♭]{0,3})(-?\\d{1,2})");
  private static final CharMatcher FLATS = CharMatcher.anyOf("b♭");

  private static final ImmutableList<Letter> LETTERS = ImmutableList.copyOf(Letter.values());

  private static final int LOWEST_OCTAVE = -1;
  private static final int HIGHEST_OCTAVE = 10;

  /** Semitones in an octave, equal temperament. */
  public static final int OCTAVE = 12;

  /** MIDI number of the tuning note A4. */
  private static final int A4_MIDI = 69;

  /** Frequency of A4 in hertz (ISO 16:1975). */
  private static final double A4_HERTZ = 440.0;

  /**
   * Checks the components.
   *
   * @throws FingeringException if the alteration is not -3 to 3 semitones, or the octave not -1 to
   *     10
   */
  public Pitch {
    if (alter < -3 || alter > 3) {
      throw new FingeringException("alteration " + alter + " is not between -3 and 3 semitones");
    }
    if (octave < LOWEST_OCTAVE || octave > HIGHEST_OCTAVE) {
      throw new FingeringException(
          "octave %d is not between %d and %d".formatted(octave, LOWEST_OCTAVE, HIGHEST_OCTAVE));
    }
  }

  /**
   * Reads a pitch, for example {@code C4}, {@code F#5}, {@code B♭3} or {@code Ebb2}.
   *
   * @throws FingeringException if the text is not a pitch
   */
  public static Pitch parse(String text) {
    Matcher matcher = SPELLING.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' is not a pitch; write letter, accidental and octave, such as F#4 or Bb3");
    }
    int octave = Integer.parseInt(matcher.group(3));
    if (octave < LOWEST_OCTAVE || octave > HIGHEST_OCTAVE) {
      throw new FingeringException(
          "'%s' has the octave %d, not %d to %d%s"
              .formatted(
                  text,
                  octave,
                  LOWEST_OCTAVE,
                  HIGHEST_OCTAVE,
                  octave < 0 ? "; a flat is written b, such as " + flat(matcher) : ""));
    }
    int alter = 0;
    for (char sign : matcher.group(2).toCharArray()) {
      alter += sign == 'x' ? 2 : FLATS.matches(sign) ? -1 : 1;
    }
    return new Pitch(Letter.valueOf(matcher.group(1).toUpperCase(Locale.ROOT)), alter, octave);
  }

  /** What {@code B-4} was probably meant to be: {@code Bb4}. */
  private static String flat(MatchResult read) {
    return read.group(1).toUpperCase(Locale.ROOT) + read.group(3).replace('-', 'b');
  }

  /** The natural note with that {@link #letterNumber() letter number}. */
  public static Pitch natural(int letterNumber) {
    Letter letter = LETTERS.get(Math.floorMod(letterNumber, LETTERS.size()));
    return new Pitch(letter, 0, Math.floorDiv(letterNumber, LETTERS.size()));
  }

  /**
   * The pitch with that {@link #letterNumber() letter number} and that MIDI number.
   *
   * @throws FingeringException if it would need more than three sharps or flats
   */
  public static Pitch spelled(int letterNumber, int midi) {
    Pitch natural = natural(letterNumber);
    return new Pitch(natural.letter(), midi - natural.midi(), natural.octave());
  }

  /** The MIDI note number: 60 for middle C, one more for each semitone up. */
  public int midi() {
    return OCTAVE * (octave + 1) + letter.semitones() + alter;
  }

  /** The frequency in hertz, equal temperament with A4 = 440 Hz (ISO 16:1975). */
  public double hertz() {
    return A4_HERTZ * Math.pow(2, (midi() - A4_MIDI) / (double) OCTAVE);
  }

  /** The number of letters above C0: 0 for C0, 1 for D0, 7 for C1. */
  public int letterNumber() {
    return LETTERS.size() * octave + letter.steps();
  }

  /** The same pitch that many octaves higher, or lower if {@code octaves} is negative. */
  public Pitch plusOctaves(int octaves) {
    return new Pitch(letter, alter, octave + octaves);
  }

  /** The pitch in ASCII, which {@link #parse} reads: {@code C4}, {@code F#5}. */
  @Override
  public String toString() {
    return letter + (alter < 0 ? "b".repeat(-alter) : "#".repeat(alter)) + octave;
  }

  /** The pitch with musical signs: {@code F♯5}, {@code B♭3}. */
  public String display() {
    return letterName() + octave;
  }

  /** The pitch without its octave: {@code F♯}, {@code B♭}. */
  public String letterName() {
    return letter + (alter < 0 ? "♭".repeat(-alter) : "♯".repeat(alter));
  }
}
