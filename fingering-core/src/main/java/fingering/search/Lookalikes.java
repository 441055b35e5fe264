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
record Lookalikes(ImmutableIntArray groupOf, ImmutableList<ImmutableIntArray> groups) {

  /** Groups the grips of a moment, looking so closely. */
  static Lookalikes among(Moment moment, ImmutableList<Grip> grips, Appearance.Grain grain) {
    Map<Appearance, Integer> numbers = new HashMap<>();
    List<ImmutableIntArray.Builder> groups = new ArrayList<>();
    ImmutableIntArray.Builder groupOf = ImmutableIntArray.builder(grips.size());
    for (int j = 0; j < grips.size(); j++) {
      Appearance seen = Appearance.of(moment, grips.get(j), grain);
      int number = numbers.computeIfAbsent(seen, look -> groups.size());
      if (number == groups.size()) {
        groups.add(ImmutableIntArray.builder());
      }
      groups.get(number).add(j);
      groupOf.add(number);
    }
    return new Lookalikes(
        groupOf.build(),
        groups.stream()
            .map(ImmutableIntArray.Builder::build)
            .collect(ImmutableList.toImmutableList()));
  }
}
