package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Slurs, ties, slides and trill lines of a part that begin or end outside an excerpt. A slur keeps
 * the notes that are left in it, because it is a bowing. The others need the note that is missing,
 * and are removed.
 */
final class NoteSpans {
  private static final ImmutableSet<String> LINES =
      ImmutableSet.of("slur", "glissando", "slide", "wavy-line");

  /**
   * The start or end of a line.
   *
   * @param note its note
   * @param head the first note of the chord
   * @param line the element of the line
   */
  private record End(XmlNode note, XmlNode head, XmlNode line) {
    String key() {
      return line.name() + "#" + line.attribute("number");
    }

    boolean starts() {
      return line.attribute("type").equals("start");
    }

    boolean stops() {
      return line.attribute("type").equals("stop");
    }

    boolean slur() {
      return line.is("slur");
    }
  }

  private final Cutter cutter;
  private final Map<String, End> before = new LinkedHashMap<>();

  /** The lines that stop after the excerpt before another of their number starts. */
  private final Set<String> stoppedAfter = new HashSet<>();

  private final Set<String> seenAfter = new HashSet<>();

  NoteSpans(Cutter cutter) {
    this.cutter = cutter;
  }

  private static List<End> ends(XmlNode note, XmlNode head) {
    List<End> ends = new ArrayList<>();
    note.all("notations")
        .flatMap(notations -> notations.children().stream())
        .flatMap(child -> child.is("ornaments") ? child.children().stream() : Stream.of(child))
        .filter(child -> LINES.contains(child.name()))
        .forEach(child -> ends.add(new End(note, head, child)));
    return ends;
  }

  /** Follows a note before the excerpt. */
  void before(XmlNode note) {
    for (End end : ends(note, note)) {
      if (end.starts()) {
        before.put(end.key(), end);
      } else if (end.stops()) {
        before.remove(end.key());
      }
    }
  }

  /** Follows a note after the excerpt. */
  void after(XmlNode note) {
    for (End end : ends(note, note)) {
      if (end.stops() && !seenAfter.contains(end.key())) {
        stoppedAfter.add(end.key());
      }
      seenAfter.add(end.key());
    }
  }

  /**
   * Closes what is cut.
   *
   * @param measures the notes of each measure of the excerpt, at least one measure
   */
  void cut(List<ImmutableList<XmlNode>> measures) {
    List<XmlNode> notes = measures.stream().flatMap(List::stream).toList();
    Map<String, XmlNode> firsts = new HashMap<>();
    Map<String, XmlNode> lasts = new HashMap<>();
    Map<String, End> open = new LinkedHashMap<>();
    Map<String, End> fromBefore = new LinkedHashMap<>(before);
    XmlNode head = null;
    for (XmlNode note : notes) {
      head = head == null || !note.has("chord") ? note : head;
      if (!note.has("rest")) {
        firsts.putIfAbsent(note.textOf("voice"), head);
        lasts.put(note.textOf("voice"), head);
      }
      for (End end : ends(note, head)) {
        if (end.starts()) {
          open.put(end.key(), end);
        } else if (end.stops() && open.remove(end.key()) == null) {
          Optional.ofNullable(fromBefore.remove(end.key()))
              .ifPresent(start -> beginAgain(start, end, firsts));
        }
      }
    }
    open.values().stream()
        .filter(end -> stoppedAfter.contains(end.key()))
        .forEach(end -> stopEarly(end, lasts));
    fromBefore.values().stream()
        .filter(end -> end.slur() && stoppedAfter.contains(end.key()))
        .forEach(end -> throughout(end, firsts, lasts));
    cutTies(measures);
  }

  private void beginAgain(End start, End stop, Map<String, XmlNode> firsts) {
    XmlNode first = firsts.getOrDefault(stop.note().textOf("voice"), stop.head());
    if (stop.slur() && !first.equals(stop.head())) {
      cutter.notation(first, slur("start", start));
    } else {
      cutter.remove(stop.line());
    }
  }

  private void stopEarly(End start, Map<String, XmlNode> lasts) {
    XmlNode last = lasts.getOrDefault(start.note().textOf("voice"), start.head());
    if (start.slur() && !last.equals(start.head())) {
      cutter.notation(last, slur("stop", start));
    } else {
      cutter.remove(start.line());
    }
  }

  private void throughout(End slur, Map<String, XmlNode> firsts, Map<String, XmlNode> lasts) {
    Optional<XmlNode> first = Optional.ofNullable(firsts.get(slur.note().textOf("voice")));
    Optional<XmlNode> last = Optional.ofNullable(lasts.get(slur.note().textOf("voice")));
    if (first.isPresent() && last.isPresent() && !first.equals(last)) {
      cutter.notation(first.get(), slur("start", slur));
      cutter.notation(last.get(), slur("stop", slur));
    }
  }

  private static String slur(String type, End of) {
    return "<slur type=\"%s\"%s%s/>"
        .formatted(
            type,
            of.line().attributeCopy("number"),
            type.equals("start") ? of.line().attributeCopy("placement") : "");
  }

  /** Ties into the first measure and out of the last one. */
  private void cutTies(List<ImmutableList<XmlNode>> measures) {
    Map<String, XmlNode> tied = new LinkedHashMap<>();
    for (int i = 0; i < measures.size(); i++) {
      for (XmlNode note : measures.get(i)) {
        String pitch = note.textOf("staff") + note.first("pitch").map(XmlNode::text).orElse("");
        if (ties(note, "stop").findAny().isPresent() && tied.remove(pitch) == null && i == 0) {
          ties(note, "stop").forEach(cutter::remove);
        }
        if (ties(note, "start").findAny().isPresent()) {
          tied.put(pitch, note);
        }
      }
    }
    ImmutableList<XmlNode> last = measures.get(measures.size() - 1);
    tied.values().stream()
        .filter(last::contains)
        .forEach(note -> ties(note, "start").forEach(cutter::remove));
  }

  private static Stream<XmlNode> ties(XmlNode note, String type) {
    return Stream.concat(
            note.all("tie"), note.all("notations").flatMap(notations -> notations.all("tied")))
        .filter(tie -> tie.attribute("type").equals(type));
  }
}
