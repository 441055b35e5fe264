package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Key;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.Optional;

/**
 * The content of a fingerboard chart: the notes, the fingers that stop them, and the open strings
 * that ring with them.
 *
 * @param instrument the instrument
 * @param key the key whose notes are named; empty if all notes are
 * @param hand the place of the hand; empty in a chart of the whole fingerboard
 * @param strings the strings shown, lowest first
 * @param rows the open strings, then the stopped places from the nut to the bridge
 */
public record Chart(
    Instrument instrument,
    Optional<Key> key,
    Optional<HandPlace> hand,
    ImmutableList<OpenString> strings,
    ImmutableList<Row> rows) {

  /**
   * The place of the hand.
   *
   * @param position the position
   * @param remark the addition to its name, such as lowered or raised; empty if there is none
   * @param semitones semitones from the open string to the first finger, or to the thumb in thumb
   *     position, rounded
   * @param others the other places of the same position, as semitones
   */
  public record HandPlace(
      Position position, String remark, int semitones, ImmutableList<Integer> others) {}

  /**
   * One place on all strings.
   *
   * @param semitones semitones above the open strings, 0 or more
   * @param millimetres distance from the nut
   * @param positions the positions whose first finger is here, to the nearest semitone
   * @param cells the notes, one for each string in order
   */
  public record Row(
      int semitones,
      double millimetres,
      ImmutableList<Position> positions,
      ImmutableList<Cell> cells) {}

  /**
   * One note on one string.
   *
   * @param string the string
   * @param semitones semitones above the open string
   * @param names its name, or both enharmonic names if there is no key; empty outside the key
   * @param relation the relation to the key
   * @param fingerings the fingers that can stop it with the hand at the place shown, or in all
   *     positions; easier ones first
   * @param rings the other open strings at the unison or octaves, nearest first
   */
  public record Cell(
      OpenString string,
      int semitones,
      ImmutableList<Pitch> names,
      KeyRelation relation,
      ImmutableList<Fingering> fingerings,
      ImmutableList<OpenString> rings) {

    /** The sounding pitch as a MIDI number. */
    public int midi() {
      return string.pitch().midi() + semitones;
    }
  }

  /** The relation of a note to the key. */
  public enum KeyRelation {
    /** In the key; without a key, a natural note or the open string. */
    NAMED,
    /** Without a key: a note between two natural notes, with two enharmonic names. */
    BETWEEN,
    /** The raised sixth or seventh degree of a minor key. */
    RAISED,
    /** Not in the key. */
    OUTSIDE
  }

  /**
   * A finger that can stop a note.
   *
   * @param name the spelling of the note for this finger
   * @param finger the finger
   * @param frame the hand frame
   * @param extended whether the finger is extended
   */
  public record Fingering(Pitch name, Finger finger, Frame frame, boolean extended) {
    /** The finger as printed, with an x before it if extended: {@code 4}, {@code x4}. */
    public String symbol() {
      return (extended ? "x" : "") + finger.symbol();
    }
  }

  /**
   * The chart of a fingerboard.
   *
   * @throws FingeringException if the instrument has no such position or place
   * @throws IllegalArgumentException if the instrument has no such string
   */
  public static Chart of(Fingerboard fingerboard, ChartRequest request) {
    return new ChartBuilder(fingerboard, request).chart();
  }
}
