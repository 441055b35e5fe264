package fingering.scoring;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * The grips of a moment, grouped by what rules look at: the grips of a group are equal in one
 * {@link GripAspect}. Immutable.
 */
final class GripGroups {
  private final ImmutableList<Grip> grips;

  /** Indexed by aspect, then by grip: the number of its group, from 0. */
  private final int[][] groups;

  /** Indexed by aspect, then by group: its first grip. */
  private final int[][] firsts;

  /** Indexed by group of the aspect {@link GripAspect#HAND}: the number of the place. */
  private final int[] places;

  private final int highest;

  /**
   * Groups the grips of one hand.
   *
   * @param frameNumbers numbers the frames
   */
  GripGroups(ImmutableList<Grip> grips, ToIntFunction<Frame> frameNumbers) {
    this.grips = grips;
    GripAspect[] aspects = GripAspect.values();
    groups = new int[aspects.length][grips.size()];
    firsts = new int[aspects.length][];
    for (int a = 0; a < aspects.length; a++) {
      Map<Object, Integer> numbers = new HashMap<>();
      int[] first = new int[grips.size()];
      for (int i = 0; i < first.length; i++) {
        int next = numbers.size();
        Integer known = numbers.putIfAbsent(aspects[a].key(grips.get(i), i), next);
        groups[a][i] = known == null ? next : known;
        first[groups[a][i]] = known == null ? i : first[groups[a][i]];
      }
      firsts[a] = Arrays.copyOf(first, numbers.size());
    }
    int[] hands = firsts(GripAspect.HAND);
    places = new int[hands.length];
    for (int g = 0; g < places.length; g++) {
      Grip grip = grips.get(hands[g]);
      places[g] = 2 * frameNumbers.applyAsInt(grip.frame()) + (grip.open() ? 1 : 0);
    }
    highest = Arrays.stream(places).max().orElse(0);
  }

  /** The grips. */
  ImmutableList<Grip> grips() {
    return grips;
  }

  /** Indexed by grip: the number of its group, from 0. Callers must not change the array. */
  int[] groups(GripAspect aspect) {
    return groups[aspect.ordinal()];
  }

  /** Indexed by group: its first grip. Callers must not change the array. */
  int[] firsts(GripAspect aspect) {
    return firsts[aspect.ordinal()];
  }

  /** The number of groups. */
  int count(GripAspect aspect) {
    return firsts(aspect).length;
  }

  /**
   * Indexed by group of the aspect {@link GripAspect#HAND}: the place of the hand, as a number that
   * equal places share. Callers must not change the array.
   */
  int[] places() {
    return places;
  }

  /** The highest place. */
  int highestPlace() {
    return highest;
  }

  /** The first grip of a group of the aspect {@link GripAspect#HAND}. */
  Grip hand(int group) {
    return grips.get(firsts(GripAspect.HAND)[group]);
  }
}
