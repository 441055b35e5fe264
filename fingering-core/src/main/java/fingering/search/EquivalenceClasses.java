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
 * The grips of a moment, divided into classes with the same visible fingering.
 *
 * @param classOf by index of the grip, the index of its class
 * @param members by index of the class, the indices of its grips, ascending
 */
record EquivalenceClasses(ImmutableIntArray classOf, ImmutableList<ImmutableIntArray> members) {

  /** Divides the grips of a moment into classes. */
  static EquivalenceClasses of(
      Moment moment, ImmutableList<Grip> grips, VisibleFingering.Grain grain) {
    Map<VisibleFingering, Integer> numbers = new HashMap<>();
    List<ImmutableIntArray.Builder> members = new ArrayList<>();
    ImmutableIntArray.Builder classOf = ImmutableIntArray.builder(grips.size());
    for (int j = 0; j < grips.size(); j++) {
      VisibleFingering visible = VisibleFingering.of(moment, grips.get(j), grain);
      int number = numbers.computeIfAbsent(visible, fingering -> members.size());
      if (number == members.size()) {
        members.add(ImmutableIntArray.builder());
      }
      members.get(number).add(j);
      classOf.add(number);
    }
    return new EquivalenceClasses(
        classOf.build(),
        members.stream()
            .map(ImmutableIntArray.Builder::build)
            .collect(ImmutableList.toImmutableList()));
  }
}
