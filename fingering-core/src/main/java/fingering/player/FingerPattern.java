package fingering.player;

import fingering.tables.Instrument.HandKind;

/**
 * A shape of the hand that a student learns. On violin and viola it is where the half step lies
 * between the fingers; on cello and double bass whether the hand is closed, extended, or has its
 * thumb on the string. The words are common practice, no source.
 */
public enum FingerPattern {
  /** The first finger low: a half step above the open string, in 1st position. */
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
  /** The hand as it falls on cello and double bass. */
  CLOSED("closed"),
  /** The cello hand with its first finger drawn back. */
  EXTENDED_BACK("extended back"),
  /** The cello hand with second to fourth finger and thumb moved forward. */
  EXTENDED_FORWARD("extended forward"),
  /** The thumb on the string; the same as thumb position among the positions. */
  THUMB("thumb");

  private final String word;

  FingerPattern(String word) {
    this.word = word;
  }

  /** The word for it in a player file. */
  public String word() {
    return word;
  }

  /** Whether hands of that kind have such a pattern. */
  public boolean fits(HandKind kind) {
    return switch (this) {
      case CLOSED, THUMB -> kind != HandKind.VIOLIN;
      case EXTENDED_BACK, EXTENDED_FORWARD -> kind == HandKind.CELLO;
      default -> kind == HandKind.VIOLIN;
    };
  }
}
