package fingering.player;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.EnumSet;
import java.util.Set;

/**
 * Where the four fingers of violin and viola can lie, and which patterns each way asks for.
 * Neighbouring fingers lie one to three semitones apart and first and fourth finger four to six;
 * the first lies one to three semitones above the open string in 1st position. A half step asks for
 * its pattern, a step and a half for the augmented second, three whole steps for the hand that is
 * apart. A distance is learned where one way at least that has it asks for nothing new.
 */
final class HandPatterns {
  private static final int FINGERS = 4;
  private static final int NARROWEST = 4;
  private static final int WIDEST = 6;

  /** The hand with 2 and 3 together, with which most begin (common practice, no source). */
  private static final ImmutableList<Integer> USUAL = ImmutableList.of(2, 4, 5, 7);

  private static final ImmutableList<String> ORDINALS =
      ImmutableList.of("first", "second", "third", "fourth");

  /** The half steps by the finger above them, from the first. */
  private static final ImmutableList<FingerPattern> HALF_STEPS =
      ImmutableList.of(
          FingerPattern.FIRST_LOW,
          FingerPattern.FIRST_SECOND,
          FingerPattern.SECOND_THIRD,
          FingerPattern.THIRD_FOURTH);

  /**
   * One way the hand can lie.
   *
   * @param places semitones of the nut (0) and of each finger above the open string
   */
  private record Way(ImmutableList<Integer> places) {
    int from(int finger, int to) {
      return places.get(to) - places.get(finger);
    }

    /** Which patterns it asks for; that of the first finger only where the nut is looked at. */
    Set<FingerPattern> asks(boolean fromNut) {
      Set<FingerPattern> asked = EnumSet.noneOf(FingerPattern.class);
      for (int finger = fromNut ? 1 : 2; finger <= FINGERS; finger++) {
        switch (from(finger - 1, finger)) {
          case 1 -> asked.add(HALF_STEPS.get(finger - 1));
          case 3 -> asked.add(FingerPattern.AUGMENTED_SECOND);
          default -> {}
        }
      }
      if (from(1, 2) == 2 && from(2, 3) == 2 && from(3, 4) == 2) {
        asked.add(FingerPattern.APART);
      }
      return asked;
    }
  }

  private static final ImmutableList<Way> WAYS = ways();

  /** The furthest that a finger of any way lies from the nut. */
  private static final int FURTHEST = 3 + WIDEST;

  /** By finger, or 0 for the nut, then finger above it, then semitones between: whether new. */
  private final boolean[][][] unlearned;

  HandPatterns(ImmutableSet<FingerPattern> learned) {
    unlearned = new boolean[FINGERS][FINGERS + 1][FURTHEST + 1];
    for (int below = 0; below < FINGERS; below++) {
      for (int above = below + 1; above <= FINGERS; above++) {
        for (int apart = 1; apart <= FURTHEST; apart++) {
          unlearned[below][above][apart] = asked(learned, below, above, apart);
        }
      }
    }
  }

  private static ImmutableList<Way> ways() {
    ImmutableList.Builder<Way> ways = ImmutableList.builder();
    for (int first = 1; first <= 3; first++) {
      for (int second = first + 1; second <= first + 3; second++) {
        for (int third = second + 1; third <= second + 3; third++) {
          for (int fourth = third + 1; fourth <= third + 3; fourth++) {
            if (fourth - first >= NARROWEST && fourth - first <= WIDEST) {
              ways.add(new Way(ImmutableList.of(0, first, second, third, fourth)));
            }
          }
        }
      }
    }
    return ways.build();
  }

  private static boolean asked(
      ImmutableSet<FingerPattern> learned, int below, int above, int apart) {
    boolean known = false;
    for (Way way : WAYS) {
      if (way.from(below, above) == apart) {
        if (learned.containsAll(way.asks(below == 0))) {
          return false;
        }
        known = true;
      }
    }
    // What no pattern has, fingers crossed or spread, is for other rules to charge.
    return known;
  }

  /**
   * Whether no learned pattern puts two fingers so far apart.
   *
   * @param below the lower finger, or 0 for the nut
   * @param above the higher finger, to 4
   * @param apart semitones from one to the other; below 1 where they are crossed
   */
  boolean unlearned(int below, int above, int apart) {
    return apart > 0 && apart <= FURTHEST && unlearned[below][above][apart];
  }

  /**
   * How a finger lies in 1st position, in words.
   *
   * @param semitones its place above the open string
   */
  static String placeTold(int finger, int semitones) {
    int off = semitones - USUAL.get(finger - 1);
    // The second finger is at home in two places, which players call low and high.
    String how = off < 0 ? " low" : off > 0 || finger == 2 ? " high" : " in its usual place";
    return "the " + ORDINALS.get(finger - 1) + " finger" + how;
  }

  /** How far two fingers lie apart, the lower one first, in words; what the trade calls it. */
  static String spacingTold(int below, int above, int apart) {
    boolean neighbours = above - below == 1;
    String how =
        switch (apart) {
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
