package fingering.musicxml.element;

import fingering.tables.FingeringException;
import fingering.tables.Pitch;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.OptionalInt;
import org.audiveris.proxymusic.Transpose;
import org.jspecify.annotations.Nullable;

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

  /** Returns the transposition that a part states; empty if it cannot be read. */
  public static Optional<Transposition> of(Transpose transpose) {
    BigDecimal stated =
        transpose.getChromatic() == null ? BigDecimal.ZERO : transpose.getChromatic();
    OptionalInt octaves = FilePitch.semitones(decimal(transpose.getOctaveChange()));
    OptionalInt chromatic = FilePitch.semitones(stated);
    OptionalInt diatonic = FilePitch.semitones(decimal(transpose.getDiatonic()));
    if (octaves.isEmpty() || chromatic.isEmpty() || diatonic.isEmpty()) {
      return Optional.empty();
    }
    int semitones = chromatic.getAsInt() + Pitch.OCTAVE * octaves.getAsInt();
    return Optional.of(
        transpose.getDiatonic() == null
            ? ofSemitones(semitones)
            : new Transposition(diatonic.getAsInt() + LETTERS * octaves.getAsInt(), semitones));
  }

  private static BigDecimal decimal(@Nullable BigInteger number) {
    return number == null ? BigDecimal.ZERO : new BigDecimal(number);
  }

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
