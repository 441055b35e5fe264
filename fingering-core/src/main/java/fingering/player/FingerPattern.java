package fingering.player;

import fingering.tables.Instrument.HandKind;

/**
 * A shape of the hand that a student learns. On violin and viola it is the place of the half step
 * between the fingers; on cello and double bass, whether the hand is closed, extended or in thumb
 * position. The names are common practice, no source.
 */
public enum FingerPattern {
  /** The first finger is low: a half step above the open string in 1st position. */
  FIRST_LOW("0-1"),
  /** First and second finger a half step apart. */
  FIRST_SECOND("1-2"),
  /** Second and third finger a half step apart. */
  SECOND_THIRD("2-3"),
  /** Third and fourth finger a half step apart. */
  THIRD_FOURTH("3-4"),
  /** Whole steps between all four fingers. */
  APART("apart"),
  /** A step and a half between two neighbouring fingers. */
  AUGMENTED_SECOND("augmented second"),
  /** The closed hand on cello and double bass. */
  CLOSED("closed"),
  /** The backward extension on the cello: the first finger reaches back. */
  EXTENDED_BACK("extended back"),
  /** The forward extension on the cello: thumb and second to fourth fingers move forward. */
  EXTENDED_FORWARD("extended forward"),
  /** Thumb position; the same as {@code thumb} among the positions. */
  THUMB("thumb");

  private final String word;

  FingerPattern(String word) {
    this.word = word;
  }

  /** The name in a player file. */
  public String word() {
    return word;
  }

  /** Whether the pattern exists on instruments of a kind. */
  public boolean fits(HandKind kind) {
    return switch (this) {
      case CLOSED, THUMB -> kind != HandKind.VIOLIN;
      case EXTENDED_BACK, EXTENDED_FORWARD -> kind == HandKind.CELLO;
      default -> kind == HandKind.VIOLIN;
    };
  }
}
