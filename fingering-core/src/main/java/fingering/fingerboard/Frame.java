package fingering.fingerboard;

import fingering.tables.Position;

/**
 * A hand frame: where the hand stands, at rest, before any finger stretches or draws back.
 *
 * @param index index among the frames of its hand, from 0
 * @param position the position's name
 * @param first place of the first finger of the hand at rest, in semitones above the open string
 * @param firstMillimetres the same place in millimetres from the nut
 * @param highest place of the highest finger as the frame is shaped, in semitones
 * @param shape whether the hand is closed or extended
 */
public record Frame(
    int index,
    Position position,
    double first,
    double firstMillimetres,
    double highest,
    Shape shape) {

  /** The shape of the hand in its frame. */
  public enum Shape {
    /** A letter a finger, each finger low or high as the letter asks: violin and viola. */
    LETTERS,
    /** The hand as it falls, each finger in one place: cello and double bass. */
    CLOSED,
    /** The first finger reaches back, the others stay. */
    EXTENDED_BACK,
    /** The second to fourth finger and the thumb move forward, the first stays. */
    EXTENDED_FORWARD
  }

  /**
   * Whether the hand has to shift to come from this frame into the other. Opening or closing the
   * hand where it stands is no shift.
   */
  public boolean shiftsTo(Frame other) {
    return first != other.first;
  }
}
