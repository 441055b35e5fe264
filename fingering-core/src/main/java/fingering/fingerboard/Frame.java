package fingering.fingerboard;

import fingering.tables.Position;
import java.util.OptionalInt;

/**
 * A hand frame: where the hand stands, at rest, before any finger stretches or draws back.
 *
 * @param index index among the frames of its hand, from 0
 * @param position the position's name
 * @param remark what players add to the name: lowered, raised, behind the nut; often empty
 * @param first place of the first finger of the hand at rest, in semitones above the open string
 * @param share the same place as a share of the length of the string from the nut, 0 to 1
 * @param highest place of the highest finger as the frame is shaped, in semitones
 * @param shape whether the hand is closed, extended, or has its thumb on the string
 */
public record Frame(
    int index,
    Position position,
    String remark,
    double first,
    double share,
    double highest,
    Shape shape) {

  /** In thumb position the first finger at rest lies this many semitones above the thumb. */
  static final int THUMB_TO_FIRST = 2;

  /** The shape of the hand in its frame. */
  public enum Shape {
    /** A letter a finger, each finger low or high as the letter asks: violin and viola. */
    LETTERS,
    /** The hand as it falls, each finger in one place: cello and double bass. */
    CLOSED,
    /** The first finger reaches back, the others stay. */
    EXTENDED_BACK,
    /** The second to fourth finger and the thumb move forward, the first stays. */
    EXTENDED_FORWARD,
    /** The thumb lies on the string, the first to third finger above it. */
    THUMB
  }

  /**
   * Whether the hand has to shift to come from this frame into the other. Opening or closing the
   * hand where it stands is no shift; bringing the thumb up or taking it down is one.
   */
  public boolean shiftsTo(Frame other) {
    return first != other.first || (shape == Shape.THUMB) != (other.shape == Shape.THUMB);
  }

  /** Semitones from the first to the highest finger at rest. */
  public double span() {
    return highest - first;
  }

  /** Semitones of the thumb above the open string, where it lies on the string. */
  public OptionalInt thumb() {
    return shape == Shape.THUMB
        ? OptionalInt.of((int) first - THUMB_TO_FIRST)
        : OptionalInt.empty();
  }

  /** The name as musicians say it, with what they add: {@code 2nd lowered}. */
  public String display() {
    return remark.isEmpty() ? position.display() : position.display() + " " + remark;
  }
}
