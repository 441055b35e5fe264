package fingering.demand;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Placement;
import fingering.tables.FingeringException;
import fingering.tables.NearWord;
import java.util.Arrays;

/** A left-hand technique that a plan can avoid or show. */
public enum Technique {
  /** Open strings; harmonics do not count. */
  OPEN_STRINGS("open strings"),
  /** The first finger. */
  FIRST_FINGER("first finger"),
  /** The second finger. */
  SECOND_FINGER("second finger"),
  /** The third finger. */
  THIRD_FINGER("third finger"),
  /** The fourth finger. */
  FOURTH_FINGER("fourth finger"),
  /** The thumb on the string. */
  THUMB("thumb"),
  /** A finger that reaches out of the hand; on the cello also the extended hand. */
  EXTENSIONS("extensions"),
  /** Notes touched as harmonics. */
  HARMONICS("harmonics");

  private final String word;

  Technique(String word) {
    this.word = word;
  }

  /** The name in a sentence: {@code open strings}, {@code the fourth finger}. */
  public String text() {
    return switch (this) {
      case OPEN_STRINGS, EXTENSIONS, HARMONICS -> word;
      case FIRST_FINGER, SECOND_FINGER, THIRD_FINGER, FOURTH_FINGER, THUMB -> "the " + word;
    };
  }

  /**
   * Reads a name: {@code fourth-finger} or {@code fourth finger}. Case does not matter.
   *
   * @throws FingeringException if there is no technique of that name
   */
  public static Technique parse(String text) {
    String name = text.strip().replace('-', ' ');
    return Arrays.stream(values())
        .filter(technique -> technique.word.equalsIgnoreCase(name))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "'%s' cannot be avoided or shown; %s"
                        .formatted(
                            text,
                            NearWord.advice(
                                text,
                                Arrays.stream(values())
                                    .map(technique -> technique.word.replace(' ', '-'))
                                    .toList()))));
  }

  /** Whether a note is played with this technique. */
  boolean isIn(Placement placement) {
    return switch (this) {
      case OPEN_STRINGS -> placement.open();
      case FIRST_FINGER -> placement.finger() == Finger.FIRST;
      case SECOND_FINGER -> placement.finger() == Finger.SECOND;
      case THIRD_FINGER -> placement.finger() == Finger.THIRD;
      case FOURTH_FINGER -> placement.finger() == Finger.FOURTH;
      case THUMB -> placement.finger() == Finger.THUMB;
      case EXTENSIONS -> !placement.open() && (placement.stretch() > 0 || extended(placement));
      case HARMONICS -> placement.touch().isPresent();
    };
  }

  private static boolean extended(Placement placement) {
    Frame.Shape shape = placement.frame().shape();
    return shape == Frame.Shape.EXTENDED_BACK || shape == Frame.Shape.EXTENDED_FORWARD;
  }
}
