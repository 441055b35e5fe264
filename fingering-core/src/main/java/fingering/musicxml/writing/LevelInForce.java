package fingering.musicxml.writing;

import com.google.common.collect.ImmutableSet;
import fingering.musicxml.writing.MeasureClock.Timed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The dynamic and the pizzicato that hold when an excerpt begins. After a hairpin the dynamic is
 * not certain, and none is written.
 */
final class LevelInForce {
  private static final ImmutableSet<String> LEVELS =
      ImmutableSet.of("pppp", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "ffff");

  /** The direction of the last dynamic, by staff. */
  private final Map<String, XmlNode> dynamics = new TreeMap<>();

  private Optional<XmlNode> plucked = Optional.empty();

  /** Follows a direction before the excerpt. */
  void before(XmlNode direction) {
    String staff = direction.textOf("staff");
    if (DirectionCopy.hasType(direction, "wedge")) {
      dynamics.remove(staff);
    }
    if (hasLevel(direction)) {
      dynamics.put(staff, direction);
    }
    DirectionCopy.plucked(direction)
        .ifPresent(now -> plucked = now ? Optional.of(direction) : Optional.empty());
  }

  private static boolean hasLevel(XmlNode direction) {
    return DirectionCopy.types(direction, "dynamics")
        .flatMap(dynamic -> dynamic.children().stream())
        .anyMatch(level -> LEVELS.contains(level.name()));
  }

  /**
   * The directions to write at the start of a measure that does not change them by its first note.
   */
  List<String> missing(List<Timed> measure) {
    BigFraction first =
        measure.stream()
            .filter(item -> item.isNote() && !item.node().has("rest"))
            .map(Timed::onset)
            .min(Comparator.naturalOrder())
            .orElse(BigFraction.ZERO);
    List<XmlNode> own =
        measure.stream()
            .filter(item -> item.onset().compareTo(first) <= 0)
            .map(Timed::node)
            .filter(node -> node.is("direction"))
            .toList();
    List<String> missing = new ArrayList<>();
    if (own.stream().allMatch(one -> DirectionCopy.plucked(one).isEmpty())) {
      plucked.ifPresent(one -> missing.add(only(one, "words")));
    }
    for (Map.Entry<String, XmlNode> level : dynamics.entrySet()) {
      if (own.stream()
          .filter(one -> DirectionCopy.hasType(one, "dynamics"))
          .noneMatch(one -> one.textOf("staff").equals(level.getKey()))) {
        missing.add(only(level.getValue(), "dynamics"));
      }
    }
    return missing;
  }

  /** A direction with its elements of one kind only. */
  private static String only(XmlNode direction, String kind) {
    StringBuilder text = new StringBuilder(direction.tag());
    DirectionCopy.types(direction, kind)
        .forEach(
            each ->
                text.append("<direction-type>").append(each.copy()).append("</direction-type>"));
    direction.first("staff").map(XmlNode::copy).ifPresent(text::append);
    return text.append("</direction>").toString();
  }
}
