package fingering.search;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The grips of a layer, grouped by what is seen of them.
 *
 * @param groupOf the group of each grip, from 0
 * @param groups the indices of the grips in each group, ascending
 */
record EquivalenceClasses(ImmutableIntArray groupOf, ImmutableList<ImmutableIntArray> groups) {

  /** Groups the grips of a moment, looking so closely. */
  static EquivalenceClasses among(
      Moment moment, ImmutableList<Grip> grips, VisibleFingering.Grain grain) {
    Map<VisibleFingering, Integer> numbers = new HashMap<>();
    List<ImmutableIntArray.Builder> groups = new ArrayList<>();
    ImmutableIntArray.Builder groupOf = ImmutableIntArray.builder(grips.size());
    for (int j = 0; j < grips.size(); j++) {
      VisibleFingering seen = VisibleFingering.of(moment, grips.get(j), grain);
      int number = numbers.computeIfAbsent(seen, look -> groups.size());
      if (number == groups.size()) {
        groups.add(ImmutableIntArray.builder());
      }
      groups.get(number).add(j);
      groupOf.add(number);
    }
    return new EquivalenceClasses(
        groupOf.build(),
        groups.stream()
            .map(ImmutableIntArray.Builder::build)
            .collect(ImmutableList.toImmutableList()));
  }
}
