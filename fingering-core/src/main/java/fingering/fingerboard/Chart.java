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
 * The fingerboard as a picture, before it is drawn: where the notes lie, which finger takes them,
 * and which of them ring with an open string.
 *
 * @param instrument the instrument
 * @param key the key whose notes are named; empty where all are
 * @param hand where the hand lies; empty in a chart of the whole fingerboard
 * @param strings the strings shown, the lowest first, as they lie before the player
 * @param rows the open strings, then the stopped places from the nut toward the bridge
 */
public record Chart(
    Instrument instrument,
    Optional<Key> key,
    Optional<HandPlace> hand,
    ImmutableList<OpenString> strings,
    ImmutableList<Row> rows) {

  /**
   * Where the hand lies.
   *
   * @param position the position
   * @param remark what players add to its name: lowered, raised; often empty
   * @param semitones semitones from the open string to the first finger, or to the thumb where it
   *     lies on the strings, to the nearest whole one
   * @param others the other places of the same position, in the same measure
   */
  public record HandPlace(
      Position position, String remark, int semitones, ImmutableList<Integer> others) {}

  /**
   * One place across all strings.
   *
   * @param semitones semitones above the open strings, from 0
   * @param millimetres distance from the nut
   * @param positions the positions whose first finger marks this place, to the nearest semitone
   * @param cells the notes, in the order of the strings
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
   * @param names its name, or both of them where no key decides; empty outside the key
   * @param standing how it stands to the key
   * @param fingerings what can stop it in the hand that is shown, or in every position; the easier
   *     first
   * @param rings the other open strings that are a unison or octaves away, the nearest first
   */
  public record Cell(
      OpenString string,
      int semitones,
      ImmutableList<Pitch> names,
      Standing standing,
      ImmutableList<Fingering> fingerings,
      ImmutableList<OpenString> rings) {

    /** The sounding pitch as a MIDI number. */
    public int midi() {
      return string.pitch().midi() + semitones;
    }
  }

  /** How a note stands to the key. */
  public enum Standing {
    /** A note of the key; without a key, a natural note or the open string. */
    NAMED,
    /** Without a key: a note between two natural ones, which bears the names of both. */
    BETWEEN,
    /** The raised sixth or seventh of a minor key. */
    RAISED,
    /** No note of the key. */
    OUTSIDE
  }

  /**
   * A finger that can take a note.
   *
   * @param name the note as it is spelled for this finger
   * @param finger the finger
   * @param frame the hand
   * @param extended whether the finger reaches out of the hand at rest
   */
  public record Fingering(Pitch name, Finger finger, Frame frame, boolean extended) {
    /** The sign in print, with an x before it where the finger reaches: {@code 4}, {@code x4}. */
    public String symbol() {
      return (extended ? "x" : "") + finger.symbol();
    }
  }

  /**
   * Draws up the chart of a fingerboard.
   *
   * @throws FingeringException if the instrument has no such position, place or string
   */
  public static Chart of(Fingerboard fingerboard, ChartRequest request) {
    return new ChartBuilder(fingerboard, request).chart();
  }
}
