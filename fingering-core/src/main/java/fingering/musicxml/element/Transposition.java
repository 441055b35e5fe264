package fingering.musicxml.element;

import fingering.tables.FingeringException;
import fingering.tables.Pitch;

/**
 * The interval from the written to the sounding pitch.
 *
 * @param diatonic letters upward, including octaves
 * @param chromatic semitones upward, including octaves
 */
public record Transposition(int diatonic, int chromatic) {
  private static final int LETTERS = 7;

  /** Letters of an interval of 0 to 11 semitones, if the file states only the semitones. */
  private static final int[] USUAL_LETTERS = {0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};

  /** Returns a transposition by semitones if the file does not state its letters. */
  public static Transposition ofSemitones(int chromatic) {
    int letters = USUAL_LETTERS[Math.abs(chromatic) % Pitch.OCTAVE];
    int octaves = Math.abs(chromatic) / Pitch.OCTAVE;
    return new Transposition(Integer.signum(chromatic) * (LETTERS * octaves + letters), chromatic);
  }

  /**
   * Returns the sounding pitch. Octaves keep the spelling; other intervals move it by their
   * letters.
   *
   * @throws FingeringException if the pitch is out of range
   */
  public Pitch apply(Pitch written) {
    if (chromatic % Pitch.OCTAVE == 0) {
      return written.plusOctaves(chromatic / Pitch.OCTAVE);
    }
    int target = written.midi() + chromatic;
    int letters = written.letterNumber() + diatonic;
    Pitch natural = Pitch.natural(letters);
    int alter = target - natural.midi();
    if (Math.abs(alter) > 2) {
      // The letters contradict the semitones, or lead to a triple accidental.
      int nearer = letters + (alter > 0 ? 1 : -1);
      Pitch next = Pitch.natural(nearer);
      if (Math.abs(target - next.midi()) < Math.abs(alter)) {
        natural = next;
        alter = target - next.midi();
      }
    }
    return new Pitch(natural.letter(), alter, natural.octave());
  }
}
