package fingering.player;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.EnumSet;
import java.util.Set;

/**
 * The hand shapes of violin and viola, and the finger patterns that each requires. Neighbouring
 * fingers are one to three semitones apart, first and fourth finger four to six; in 1st position
 * the first finger is one to three semitones above the open string. A half step requires its
 * pattern, a step and a half the augmented second, and three whole steps {@link
 * FingerPattern#APART}. A spacing of two fingers is learned if it occurs in a hand shape all of
 * whose patterns are learned.
 */
final class HandPatterns {
  private static final int FINGERS = 4;
  private static final int NARROWEST = 4;
  private static final int WIDEST = 6;

  /**
   * The hand shape with 2 and 3 together, which most students learn first (common practice, no
   * source).
   */
  private static final ImmutableList<Integer> USUAL = ImmutableList.of(2, 4, 5, 7);

  private static final ImmutableList<String> ORDINALS =
      ImmutableList.of("first", "second", "third", "fourth");

  /** Indexed by upper finger from the first: the pattern of the half step below it. */
  private static final ImmutableList<FingerPattern> HALF_STEPS =
      ImmutableList.of(
          FingerPattern.FIRST_LOW,
          FingerPattern.FIRST_SECOND,
          FingerPattern.SECOND_THIRD,
          FingerPattern.THIRD_FOURTH);

  /**
   * A hand shape.
   *
   * @param places semitones of the nut (0) and of each finger above the open string
   */
  private record HandShape(ImmutableList<Integer> places) {
    int semitones(int below, int above) {
      return places.get(above) - places.get(below);
    }

    /** The patterns that the shape requires; the low first finger only if the nut matters. */
    Set<FingerPattern> required(boolean fromNut) {
      Set<FingerPattern> required = EnumSet.noneOf(FingerPattern.class);
      for (int finger = fromNut ? 1 : 2; finger <= FINGERS; finger++) {
        switch (semitones(finger - 1, finger)) {
          case 1 -> required.add(HALF_STEPS.get(finger - 1));
          case 3 -> required.add(FingerPattern.AUGMENTED_SECOND);
          default -> {}
        }
      }
      if (semitones(1, 2) == 2 && semitones(2, 3) == 2 && semitones(3, 4) == 2) {
        required.add(FingerPattern.APART);
      }
      return required;
    }
  }

  private static final ImmutableList<HandShape> SHAPES = shapes();

  /** The largest distance of a finger from the nut, in semitones. */
  private static final int FURTHEST = 3 + WIDEST;

  /** Indexed by lower finger (0 for the nut), upper finger and semitones between them. */
  private final boolean[][][] unlearned;

  HandPatterns(ImmutableSet<FingerPattern> learned) {
    unlearned = new boolean[FINGERS][FINGERS + 1][FURTHEST + 1];
    for (int below = 0; below < FINGERS; below++) {
      for (int above = below + 1; above <= FINGERS; above++) {
        for (int semitones = 1; semitones <= FURTHEST; semitones++) {
          unlearned[below][above][semitones] = isUnlearned(learned, below, above, semitones);
        }
      }
    }
  }

  private static ImmutableList<HandShape> shapes() {
    ImmutableList.Builder<HandShape> shapes = ImmutableList.builder();
    for (int first = 1; first <= 3; first++) {
      for (int second = first + 1; second <= first + 3; second++) {
        for (int third = second + 1; third <= second + 3; third++) {
          for (int fourth = third + 1; fourth <= third + 3; fourth++) {
            if (fourth - first >= NARROWEST && fourth - first <= WIDEST) {
              shapes.add(new HandShape(ImmutableList.of(0, first, second, third, fourth)));
            }
          }
        }
      }
    }
    return shapes.build();
  }

  private static boolean isUnlearned(
      ImmutableSet<FingerPattern> learned, int below, int above, int semitones) {
    boolean exists = false;
    for (HandShape shape : SHAPES) {
      if (shape.semitones(below, above) == semitones) {
        if (learned.containsAll(shape.required(below == 0))) {
          return false;
        }
        exists = true;
      }
    }
    // Spacings in no pattern, with fingers crossed or spread, are charged by other rules.
    return exists;
  }

  /**
   * Whether a spacing of two fingers needs a pattern that is not learned.
   *
   * @param below the lower finger, 1 to 3, or 0 for the nut
   * @param above the higher finger, up to 4
   * @param semitones semitones from one to the other; below 1 if they are crossed
   */
  boolean unlearned(int below, int above, int semitones) {
    return semitones > 0 && semitones <= FURTHEST && unlearned[below][above][semitones];
  }

  /**
   * The place of a finger in 1st position, in words.
   *
   * @param semitones semitones above the open string
   */
  static String describePlace(int finger, int semitones) {
    int offset = semitones - USUAL.get(finger - 1);
    // The second finger has two usual places, which players call low and high.
    String name = ORDINALS.get(finger - 1) + " finger";
    if (offset < 0) {
      return "a low " + name;
    }
    return offset > 0 || finger == 2 ? "a high " + name : "the " + name + " in its usual place";
  }

  /** The spacing of two fingers in words, the lower finger first. */
  static String describeSpacing(int below, int above, int semitones) {
    boolean neighbours = above - below == 1;
    String how =
        switch (semitones) {
          case 1 -> "together";
          case 2 -> "a whole step apart";
          case 3 -> neighbours ? "an augmented second apart" : "a minor third apart";
          case 4 -> "a major third apart";
          case 5 -> "a fourth apart";
          default -> "an augmented fourth apart";
        };
    return below + " and " + above + " " + how;
  }
}
