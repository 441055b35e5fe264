package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.LinkedHashMultimap;
import com.google.common.collect.SetMultimap;
import fingering.music.Place;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;

/** Collects what cannot be read in a part, to sum it up in one remark for each kind. */
public final class Faults {
  /** The most places that a remark names. */
  private static final int MAX_NAMED = 3;

  private final Map<Fault, Integer> counts = new EnumMap<>(Fault.class);
  private final SetMultimap<Fault, String> places = LinkedHashMultimap.create();

  /** Adds a fault at a place. */
  public void add(Fault fault, Place place) {
    counts.merge(fault, 1, Integer::sum);
    if (places.get(fault).size() <= MAX_NAMED) {
      places.put(fault, place.toString());
    }
  }

  /** Returns the remarks, a sentence without full stop for each kind. */
  public ImmutableList<String> remarks() {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    counts.forEach((fault, number) -> remarks.add(fault.remark(number, named(fault))));
    return remarks.build();
  }

  private String named(Fault fault) {
    String first = places.get(fault).stream().limit(MAX_NAMED).collect(Collectors.joining("; "));
    return first + (places.get(fault).size() > MAX_NAMED ? " and elsewhere" : "");
  }
}
