package fingering.musicxml.element;

import fingering.tables.FingeringException;
import fingering.tables.Pitch;

/**
 * What leads from the written to the sounding pitch.
 *
 * @param diatonic letters upward, octaves included
 * @param chromatic semitones upward, octaves included
 */
public record Transposition(int diatonic, int chromatic) {
  private static final int LETTERS = 7;

  /** Letters that a transposition spans where the file names only its semitones, 0 to 11. */
  private static final int[] USUAL_LETTERS = {0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};

  /** A transposition of that many semitones whose letters the file does not name. */
  public static Transposition ofSemitones(int chromatic) {
    int letters = USUAL_LETTERS[Math.abs(chromatic) % Pitch.OCTAVE];
    int octaves = Math.abs(chromatic) / Pitch.OCTAVE;
    return new Transposition(Integer.signum(chromatic) * (LETTERS * octaves + letters), chromatic);
  }

  /**
   * The sounding pitch. Octaves keep the spelling, other intervals move it by their letters.
   *
   * @throws FingeringException if no pitch is that high or low
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
      // The letters named contradict the semitones, or lead to a threefold accidental.
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
