package fingering.music;

import com.google.common.collect.ImmutableSet;
import fingering.tables.FingeringException;
import fingering.tables.Pitch;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A note or a rest as it is printed; tied notes are several.
 *
 * @param address where it stands in the file
 * @param onset quarter notes from the start of its measure
 * @param length quarter notes that it takes; 0 for a grace note
 * @param value the note value in print
 * @param pitch the pitch in print; empty for a rest
 * @param accidental semitones that the printed accidental shows, -2 to 2; empty where none is
 * @param grace whether it is a grace note
 * @param cue whether it is a cue: another part's note, to be read and not played
 * @param chord whether it shares the stem of the note before it
 * @param voice the voice as numbered in the file
 * @param tied whether a tie leads on from it
 * @param beam how it is joined to its neighbours
 * @param tuplet notes of the tuplet it belongs to: 3 in a triplet; 0 where in none
 * @param tremolo its tremolo
 * @param signs what stands at its head
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

  /** The longest value that is told apart, and the shortest, as parts of a whole note. */
  private static final int SHORTEST = 256;

  /**
   * A note value.
   *
   * @param part which part of a whole note: 1 a whole, 2 a half, 4 a quarter, to 256; 0 a breve
   * @param dots augmentation dots, from 0
   * @param wholeMeasure whether it is the rest of a whole measure, whatever the meter
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

    /** Flags or beams of the value: 1 for an eighth; 0 for a quarter and longer. */
    public int flags() {
      return part < 8 ? 0 : Integer.numberOfTrailingZeros(part) - 2;
    }
  }

  /** How a note is joined to its neighbours by its first beam. */
  public enum Beam {
    NONE,
    BEGIN,
    CONTINUE,
    END
  }

  /**
   * Strokes of a tremolo.
   *
   * @param contexts how many, from 0
   * @param role at one note, or where in a pair of notes that share them
   */
  public record Tremolo(int contexts, Role role) {
    /** No tremolo. */
    public static final Tremolo NONE = new Tremolo(0, Role.ALONE);

    /** The place of a note in a tremolo. */
    public enum Role {
      ALONE,
      FIRST,
      SECOND
    }

    /** Whether two notes share it. */
    public boolean paired() {
      return role != Role.ALONE;
    }
  }

  /** Signs at a note's head. */
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

  /** Where it ends, in quarter notes from the start of its measure. */
  public BigFraction end() {
    return onset.add(length);
  }
}
