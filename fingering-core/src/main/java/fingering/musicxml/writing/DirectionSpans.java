package fingering.musicxml.writing;

import com.google.common.collect.ImmutableSet;
import fingering.musicxml.writing.MeasureClock.Timing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** Hairpins, octave lines and other lines of a part that begin or end outside an excerpt. */
final class DirectionSpans {
  private static final ImmutableSet<String> LINES =
      ImmutableSet.of("wedge", "octave-shift", "dashes", "bracket");

  private static final ImmutableSet<String> STARTS =
      ImmutableSet.of("start", "crescendo", "diminuendo", "up", "down");

  /**
   * The start or end of a line.
   *
   * @param direction the direction that contains it
   * @param line the element of the line
   */
  private record End(XmlNode direction, XmlNode line) {
    String key() {
      return line.name() + "#" + line.attribute("number");
    }

    boolean starts() {
      return STARTS.contains(line.attribute("type"));
    }

    boolean stops() {
      return line.attribute("type").equals("stop");
    }
  }

  private final Cutter cutter;
  private final Map<String, End> open = new LinkedHashMap<>();

  DirectionSpans(Cutter cutter) {
    this.cutter = cutter;
  }

  private static List<End> ends(XmlNode direction) {
    List<End> ends = new ArrayList<>();
    direction
        .all("direction-type")
        .flatMap(type -> type.children().stream())
        .filter(child -> LINES.contains(child.name()))
        .forEach(child -> ends.add(new End(direction, child)));
    return ends;
  }

  /** Follows a direction before the excerpt. */
  void before(XmlNode direction) {
    for (End end : ends(direction)) {
      if (end.starts()) {
        open.put(end.key(), end);
      } else if (end.stops()) {
        open.remove(end.key());
      }
    }
  }

  /**
   * Closes the lines that are cut.
   *
   * @return the directions to write at the start of the excerpt
   */
  List<String> cut(List<Timing> measures) {
    Map<String, End> before = new LinkedHashMap<>(open);
    for (int i = 0; i < measures.size(); i++) {
      boolean last = i == measures.size() - 1;
      for (MeasureClock.Timed item : measures.get(i).items()) {
        if (item.node().is("direction")) {
          boolean first = i == 0 && item.atStart();
          boolean atEnd = last && isEnd(item.onset(), measures.get(i).end());
          ends(item.node()).forEach(end -> follow(end, before, first, atEnd));
        }
      }
    }
    Timing last = measures.get(measures.size() - 1);
    open.values().forEach(start -> atEnd(last, stop(start)));
    return before.values().stream().map(start -> direction(start, start.line().copy())).toList();
  }

  private static boolean isEnd(BigFraction onset, BigFraction end) {
    return end.signum() > 0 && onset.compareTo(end) >= 0;
  }

  private void follow(End end, Map<String, End> before, boolean first, boolean atEnd) {
    if (end.starts()) {
      if (atEnd) {
        remove(end);
      } else {
        open.put(end.key(), end);
      }
    } else if (end.stops()) {
      End start = open.remove(end.key());
      if (start != null && first && before.remove(end.key(), start)) {
        remove(end);
      }
    }
  }

  private void remove(End end) {
    List<XmlNode> types = end.direction().all("direction-type").toList();
    for (XmlNode type : types) {
      if (type.children().contains(end.line())) {
        boolean alone = type.children().size() == 1;
        cutter.remove(alone ? (types.size() == 1 ? end.direction() : type) : end.line());
      }
    }
  }

  private static String stop(End start) {
    String more =
        switch (start.line().name()) {
          case "octave-shift" -> start.line().attributeCopy("size");
          case "bracket" -> " line-end=\"none\"";
          default -> "";
        };
    String line =
        "<%s type=\"stop\"%s%s/>"
            .formatted(start.line().name(), start.line().attributeCopy("number"), more);
    return direction(start, line);
  }

  private static String direction(End of, String line) {
    String staff = of.direction().textOf("staff");
    return "<direction%s><direction-type>%s</direction-type>%s</direction>"
        .formatted(
            of.direction().attributeCopy("placement"),
            line,
            staff.isEmpty() ? "" : "<staff>" + staff + "</staff>");
  }

  private void atEnd(Timing measure, String direction) {
    List<MeasureClock.Timed> items = measure.items();
    int last = items.size() - 1;
    if (last >= 0 && items.get(last).node().is("barline")) {
      cutter.insertBefore(items.get(last).node(), direction);
    } else {
      cutter.append(measure.node(), direction);
    }
  }
}
