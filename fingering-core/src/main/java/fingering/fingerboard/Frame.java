package fingering.fingerboard;

import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.OptionalInt;

/**
 * A hand frame: a place and shape of the hand, before any finger stretches.
 *
 * @param index index among the frames of the hand, from 0
 * @param hand the instrument's kind of hand
 * @param position the position
 * @param remark the addition to its name: lowered, raised, behind the nut; empty if there is none
 * @param first place of the first finger, in semitones above the open string
 * @param share the same place as a fraction of the string length, from the nut; below 0 behind it
 * @param highest place of the highest finger, in semitones above the open string
 * @param shape the shape of the hand
 */
public record Frame(
    int index,
    HandKind hand,
    Position position,
    String remark,
    double first,
    double share,
    double highest,
    Shape shape) {

  /** Semitones from the thumb to the first finger in thumb position. */
  static final int THUMB_TO_FIRST = 2;

  /** The shape of the hand. */
  public enum Shape {
    /** One letter for each finger, low or high depending on the accidental: violin and viola. */
    LETTERS,
    /** Closed, each finger at one place: cello and double bass. */
    CLOSED,
    /** Backward extension: the first finger reaches back, the others stay. */
    EXTENDED_BACK,
    /** Forward extension: the second to fourth finger and the thumb move up, the first stays. */
    EXTENDED_FORWARD,
    /** Thumb position: the thumb is on the string, the first to third finger above it. */
    THUMB
  }

  /**
   * Whether the hand must shift from this frame to the other. An extension is not a shift; placing
   * the thumb on the string, or taking it off, is one.
   */
  public boolean shiftsTo(Frame other) {
    return first != other.first || (shape == Shape.THUMB) != (other.shape == Shape.THUMB);
  }

  /** Semitones from the first to the highest finger. */
  public double span() {
    return highest - first;
  }

  /** Place of the thumb, in semitones above the open string; empty unless in thumb position. */
  public OptionalInt thumb() {
    return shape == Shape.THUMB
        ? OptionalInt.of((int) first - THUMB_TO_FIRST)
        : OptionalInt.empty();
  }

  /** The name as musicians say it, with the remark: {@code 2nd lowered}. */
  public String display() {
    return remark.isEmpty() ? position.display() : position.display() + " " + remark;
  }
}
