package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.writing.MeasureClock.Timed;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Clef, key, time, tuning and transposition at a place in a part. */
final class AttributesInForce {
  /** What stays in force, in the order in which it is written. */
  private static final ImmutableList<String> NAMES =
      ImmutableList.of(
          "divisions",
          "key",
          "time",
          "staves",
          "part-symbol",
          "instruments",
          "clef",
          "staff-details",
          "transpose");

  /** A kind of attribute on one staff; 0 is all staves. */
  private record Key(int kind, int staff) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      return Comparator.comparingInt(Key::kind).thenComparingInt(Key::staff).compare(this, other);
    }
  }

  private final Map<Key, XmlNode> inForce = new TreeMap<>();

  /** Follows an {@code <attributes>} element. */
  void add(XmlNode attributes) {
    for (XmlNode each : attributes.children()) {
      Key key = key(each);
      if (key.kind() >= 0) {
        if (key.staff() == 0) {
          inForce.keySet().removeIf(other -> other.kind() == key.kind());
        }
        inForce.put(key, each);
      }
    }
  }

  private static Key key(XmlNode attribute) {
    String number = attribute.attribute("number");
    boolean single = number.length() == 1 && Character.isDigit(number.charAt(0));
    // A clef without a number is on the first staff; other attributes are then for all staves.
    int all = attribute.is("clef") || attribute.is("staff-details") ? 1 : 0;
    return new Key(
        NAMES.indexOf(attribute.name()), single ? Character.digit(number.charAt(0), 10) : all);
  }

  /**
   * The element to write at the start of a measure, "" if nothing is missing there.
   *
   * @param measure the measure, which may begin with attributes of its own
   */
  String missing(List<Timed> measure) {
    AttributesInForce own = new AttributesInForce();
    for (Timed item : measure) {
      if (item.isNote() || !item.atStart()) {
        break;
      }
      if (item.node().is("attributes")) {
        own.add(item.node());
      }
    }
    String content =
        inForce.entrySet().stream()
            .filter(entry -> !own.covers(entry.getKey()))
            .map(entry -> entry.getValue().copy())
            .collect(Collectors.joining());
    return content.isEmpty() ? "" : "<attributes>" + content + "</attributes>";
  }

  private boolean covers(Key key) {
    return inForce.keySet().stream()
        .filter(own -> own.kind() == key.kind())
        .anyMatch(own -> own.staff() == 0 || own.staff() == key.staff());
  }
}
