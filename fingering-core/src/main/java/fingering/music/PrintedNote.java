package fingering.music;

import com.google.common.collect.ImmutableSet;
import fingering.tables.FingeringException;
import fingering.tables.Pitch;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A note or rest as printed; each of several tied notes is one.
 *
 * @param address address in the score
 * @param onset time in quarter notes from the start of its measure
 * @param length length in quarter notes; 0 for a grace note
 * @param value the printed note value
 * @param pitch the printed pitch; empty for a rest
 * @param accidental the printed accidental in semitones, -2 to 2; empty if there is none
 * @param grace whether it is a grace note
 * @param cue whether it is a cue note, which is not played
 * @param chord whether it belongs to the same chord as the note before it
 * @param voice the voice as named in the score
 * @param tied whether it is tied to the next note
 * @param beam its role in a beam
 * @param tuplet number of the tuplet it belongs to, 3 for a triplet; 0 if there is none
 * @param tremolo the tremolo strokes at the note
 * @param signs the signs at the note
 */
public record PrintedNote(
    NoteAddress address,
    BigFraction onset,
    BigFraction length,
    Value value,
    Optional<Pitch> pitch,
    OptionalInt accidental,
    boolean grace,
    boolean cue,
    boolean chord,
    String voice,
    boolean tied,
    Beam beam,
    int tuplet,
    Tremolo tremolo,
    ImmutableSet<Sign> signs) {

  /** The shortest note value, as a fraction of a whole note: 1/256. */
  private static final int SHORTEST = 256;

  /**
   * A note value.
   *
   * @param part denominator of the value: 1 for a whole note, 2 for a half, 4 for a quarter, to
   *     256; 0 for a breve
   * @param dots number of augmentation dots, 0 or more
   * @param wholeMeasure whether it is a whole-measure rest
   */
  public record Value(int part, int dots, boolean wholeMeasure) {
    /**
     * Checks the components.
     *
     * @throws FingeringException if there is no such note value
     */
    public Value {
      if (part < 0 || part > SHORTEST || (part & (part - 1)) != 0 || dots < 0) {
        throw new FingeringException("a note value of 1/" + part + " with " + dots + " dots");
      }
    }

    /** Number of flags or beams: 1 for an eighth; 0 for a quarter and longer. */
    public int flags() {
      return part < 8 ? 0 : Integer.numberOfTrailingZeros(part) - 2;
    }
  }

  /** The role of a note in its primary beam. */
  public enum Beam {
    NONE,
    BEGIN,
    CONTINUE,
    END
  }

  /**
   * A tremolo.
   *
   * @param strokes number of strokes through the stem, 0 or more
   * @param role on one note, or first or second of two notes
   */
  public record Tremolo(int strokes, Role role) {
    /** No tremolo. */
    public static final Tremolo NONE = new Tremolo(0, Role.ALONE);

    /** The role of a note in a tremolo. */
    public enum Role {
      ALONE,
      FIRST,
      SECOND
    }

    /** Whether the tremolo alternates between two notes. */
    public boolean paired() {
      return role != Role.ALONE;
    }
  }

  /** A sign at a note. */
  public enum Sign {
    STACCATO,
    ACCENT,
    MARCATO,
    TENUTO,
    FERMATA,
    TRILL,
    HARMONIC,
    LEFT_PLUCKED,
    UP_BOW,
    DOWN_BOW
  }

  /** Whether it is a rest. */
  public boolean rest() {
    return pitch.isEmpty();
  }

  /** The end in quarter notes from the start of its measure. */
  public BigFraction end() {
    return onset.add(length);
  }
}
