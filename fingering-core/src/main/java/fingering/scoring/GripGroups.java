package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToIntFunction;

/**
 * The grips of a moment, grouped by what rules look at: the grips of a group are equal in one
 * {@link GripAspect}. Immutable.
 */
final class GripGroups {
  /** Not the list itself, which is garbage when no passage has it any more. */
  private final Grip[] grips;

  private final ImmutableMap<GripAspect, Grouping> groupings;

  /** Indexed by group of the aspect {@link GripAspect#HAND}: the number of the place. */
  private final int[] places;

  private final int highestPlace;

  /** The groups by one aspect. */
  private static final class Grouping {
    /** Indexed by grip: the number of its group, from 0. */
    private final int[] groups;

    /** Indexed by group: its first grip. */
    private final int[] firsts;

    Grouping(ImmutableList<Grip> grips, GripAspect aspect) {
      Map<Object, Integer> numbers = new HashMap<>();
      groups = new int[grips.size()];
      int[] found = new int[grips.size()];
      for (int i = 0; i < groups.length; i++) {
        int next = numbers.size();
        Integer known = numbers.putIfAbsent(aspect.key(grips.get(i), i), next);
        groups[i] = known == null ? next : known;
        if (known == null) {
          found[next] = i;
        }
      }
      firsts = Arrays.copyOf(found, numbers.size());
    }
  }

  /**
   * Groups the grips of one hand.
   *
   * @param frameNumbers numbers the frames
   */
  GripGroups(ImmutableList<Grip> grips, ToIntFunction<Frame> frameNumbers) {
    this.grips = grips.toArray(new Grip[0]);
    groupings =
        Arrays.stream(GripAspect.values())
            .collect(
                Maps.toImmutableEnumMap(aspect -> aspect, aspect -> new Grouping(grips, aspect)));
    int[] hands = firsts(GripAspect.HAND);
    places = new int[hands.length];
    for (int g = 0; g < places.length; g++) {
      Grip grip = grips.get(hands[g]);
      places[g] = 2 * frameNumbers.applyAsInt(grip.frame()) + (grip.open() ? 1 : 0);
    }
    highestPlace = Arrays.stream(places).max().orElse(0);
  }

  /** The grips. Callers must not change the array. */
  Grip[] grips() {
    return grips;
  }

  private Grouping by(GripAspect aspect) {
    return Objects.requireNonNull(groupings.get(aspect));
  }

  /** Indexed by grip: the number of its group, from 0. Callers must not change the array. */
  int[] groups(GripAspect aspect) {
    return by(aspect).groups;
  }

  /** Indexed by group: its first grip. Callers must not change the array. */
  int[] firsts(GripAspect aspect) {
    return by(aspect).firsts;
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
    return highestPlace;
  }

  /** The first grip of a group of the aspect {@link GripAspect#HAND}. */
  Grip hand(int group) {
    return grips[firsts(GripAspect.HAND)[group]];
  }
}
