package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

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

  /** The hand with 2 and 3 together, with which most begin: finger by finger from the nut. */
  private static final int[] USUAL = {0, 2, 4, 5, 7};

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

    /** Semitones by which its fingers lie off the usual hand. */
    int unusual() {
      int off = 0;
      for (int finger = 1; finger <= FINGERS; finger++) {
        off += Math.abs(places.get(finger) - USUAL[finger]);
      }
      return off;
    }
  }

  private static final ImmutableList<Way> WAYS = ways();

  /** The furthest that a finger of any way lies from the nut. */
  private static final int FURTHEST = 3 + WIDEST;

  private final ImmutableSet<FingerPattern> learned;

  /** By finger, or 0 for the nut, then finger above it, then semitones between: whether new. */
  private final boolean[][][] unlearned;

  HandPatterns(ImmutableSet<FingerPattern> learned) {
    this.learned = learned;
    unlearned = new boolean[FINGERS][FINGERS + 1][FURTHEST + 1];
    for (int below = 0; below < FINGERS; below++) {
      for (int above = below + 1; above <= FINGERS; above++) {
        for (int apart = 1; apart <= FURTHEST; apart++) {
          unlearned[below][above][apart] = asked(below, above, apart);
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

  private boolean asked(int below, int above, int apart) {
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
   * What is new about fingers so far apart: the patterns that lack least, and of these those
   * nearest to 2 and 3 together; several where they come to the same.
   */
  String told(int below, int above, int apart) {
    boolean fromNut = below == 0;
    ImmutableList<Way> able =
        WAYS.stream()
            .filter(way -> way.from(below, above) == apart)
            .collect(ImmutableList.toImmutableList());
    int fewest = able.stream().mapToInt(way -> lacks(way, fromNut).size()).min().orElse(0);
    Predicate<Way> lacksLeast = way -> lacks(way, fromNut).size() == fewest;
    int nearest = able.stream().filter(lacksLeast).mapToInt(Way::unusual).min().orElse(0);
    return able.stream()
        .filter(lacksLeast.and(way -> way.unusual() == nearest))
        .map(way -> lacks(way, fromNut))
        .distinct()
        .map(lack -> lack.stream().map(FingerPattern::told).collect(Collectors.joining(" with ")))
        .collect(Collectors.joining(" or "));
  }

  private Set<FingerPattern> lacks(Way way, boolean fromNut) {
    return Sets.difference(way.asks(fromNut), learned).immutableCopy();
  }
}
