package fingering.music.print;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.music.NoteAddress;
import fingering.tables.FingeringException;
import fingering.tables.Pitch;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A note or rest as printed; each of several tied notes is one.
 *
 * @param address address in the score
 * @param onset time in quarter notes from the start of its measure
 * @param length length in quarter notes; 0 for a grace note
 * @param value the printed note value
 * @param pitch the pitch; empty for a rest. Under an {@linkplain PrintedPart.OctaveLine octave
 *     line} the note is printed one or two octaves away from it
 * @param restAt the pitch at whose place a rest is printed; empty for a note, and for a rest at its
 *     usual place
 * @param accidental the printed accidental
 * @param grace whether it is a grace note
 * @param cue whether it is a cue note, which is not played
 * @param chord whether it belongs to the same chord as the note before it
 * @param voice the voice as named in the score
 * @param shape notehead, stem and beams
 * @param tied whether it is tied to the next note
 * @param tieSide the side to which that tie curves
 * @param tuplet number of the innermost tuplet it belongs to, 3 for a triplet; 0 if there is none.
 *     What is printed of tuplets is in {@link PrintedPart#tuplets}
 * @param tremolo the tremolo strokes at the note
 * @param signs the signs at the note, each with its side
 * @param ornamentAccidentals the accidentals over and under its trill or other ornament
 */
public record PrintedNote(
    NoteAddress address,
    BigFraction onset,
    BigFraction length,
    Value value,
    Optional<Pitch> pitch,
    Optional<Pitch> restAt,
    Optional<Accidental> accidental,
    boolean grace,
    boolean cue,
    boolean chord,
    String voice,
    NoteShape shape,
    boolean tied,
    Side tieSide,
    int tuplet,
    Tremolo tremolo,
    ImmutableMap<Sign, Side> signs,
    ImmutableList<OrnamentAccidental> ornamentAccidentals) {

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
    /** A dot. */
    STACCATO,
    /** A vertical stroke or a filled wedge; also the stroke for spiccato. */
    STACCATISSIMO,
    /** The sign &gt;. */
    ACCENT,
    /** The sign &lt;&gt;. */
    SOFT_ACCENT,
    /** The upright wedge of the strong accent. */
    MARCATO,
    /** A horizontal stroke. With a dot it asks for detached notes under one bow. */
    TENUTO,
    /** A fermata that opens downwards. */
    FERMATA,
    /** A fermata upside down, below the staff. */
    INVERTED_FERMATA,
    /** The letters <i>tr</i>. */
    TRILL,
    TURN,
    INVERTED_TURN,
    /** The zigzag with a vertical stroke: the lower note. */
    MORDENT,
    /** The zigzag without a stroke: the upper note. */
    SHORT_TRILL,
    /** The circle of a harmonic. One with a diamond notehead has none. */
    HARMONIC,
    /** The plus sign of the left hand's pizzicato. */
    LEFT_PLUCKED,
    /** The circle with a stroke: the string snaps on the fingerboard. */
    SNAP_PIZZICATO,
    UP_BOW,
    DOWN_BOW,
    /** The vertical wavy line before a chord. */
    ARPEGGIO,
    /** The same with an arrow upwards. */
    ARPEGGIO_UP,
    /** The same with an arrow downwards. */
    ARPEGGIO_DOWN,
    /** The bracket before a chord that is not to be broken. */
    NO_ARPEGGIO,
    /** The comma after a note. */
    BREATH,
    /** The two strokes after a note. */
    CAESURA
  }

  /**
   * The accidental of an ornament.
   *
   * @param accidental the accidental
   * @param side the side of the ornament
   */
  public record OrnamentAccidental(Accidental accidental, Side side) {}

  /** Whether it is a rest. */
  public boolean rest() {
    return pitch.isEmpty();
  }

  /** Whether it has a sign. */
  public boolean has(Sign sign) {
    return signs.containsKey(sign);
  }

  /** The end in quarter notes from the start of its measure. */
  public BigFraction end() {
    return onset.add(length);
  }
}
