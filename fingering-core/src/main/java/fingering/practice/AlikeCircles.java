package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Movements;
import fingering.music.Place;
import fingering.practice.Circle.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Joins circles that say the same into one line, at the first of them: seven times <i>fz</i> is one
 * thing to know. Dynamics, hairpins and words stay, because each is a place to look at.
 */
final class AlikeCircles {
  private AlikeCircles() {}

  /** Returns the circles with those alike joined, in the same order. */
  static ImmutableList<Circle> joined(List<Circle> circles, Movements movements) {
    Map<Circle, List<Circle>> groups = new LinkedHashMap<>();
    for (Circle circle : circles) {
      Circle first =
          groups.keySet().stream()
              .filter(other -> joins(other.kind()))
              .filter(other -> other.kind() == circle.kind() && key(other).equals(key(circle)))
              .findFirst()
              .orElse(circle);
      groups.computeIfAbsent(first, none -> new ArrayList<>()).add(circle);
    }
    return groups.entrySet().stream()
        .map(group -> joined(group.getKey(), group.getValue(), movements))
        .collect(ImmutableList.toImmutableList());
  }

  private static boolean joins(Kind kind) {
    return kind == Kind.SUDDEN || kind == Kind.ACCENT || kind == Kind.READING;
  }

  /** What two circles have to share: a reminder names its beat, and is alike on any other. */
  private static String key(Circle circle) {
    return circle.text().replaceFirst(" of beat [\\d.]+", "");
  }

  private static Circle joined(Circle first, List<Circle> all, Movements movements) {
    List<Place> others = all.stream().skip(1).map(Circle::place).toList();
    int measure = first.place().measureIndex();
    String beats =
        listed(others.stream().filter(at -> at.measureIndex() == measure).map(Place::beatText));
    String measures =
        listed(
            others.stream()
                .filter(at -> at.measureIndex() != measure)
                .map(at -> at.measure() + movements.phrase(at.measureIndex())));
    String more =
        Stream.of(
                beats.isEmpty() ? "" : (beats.contains(",") ? "on beats " : "on beat ") + beats,
                measures.isEmpty() ? "" : "in m. " + measures)
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(", and "));
    return more.isEmpty()
        ? first
        : new Circle(first.kind(), first.place(), first.text() + "; also " + more);
  }

  private static String listed(Stream<String> numbers) {
    return numbers.distinct().collect(Collectors.joining(", "));
  }
}
