package fingering.abc.xml;

import fingering.abc.reading.MeasureItem;
import fingering.abc.reading.MeasureItem.NoteOrRest;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;

/** Beams notes that are typed without blanks between them (ABC 2.1, section 'Beams'). */
final class Beams {
  // By identity, because two notes of a measure may be equal.
  private final IdentityHashMap<NoteOrRest, List<String>> beams = new IdentityHashMap<>();

  /** Beams the notes of a measure. */
  Beams(List<MeasureItem> items) {
    group(items, false);
    group(items, true);
  }

  /**
   * Returns the MusicXML values of the beams of a note, the longest beam first; empty for a note
   * without beams.
   */
  List<String> of(NoteOrRest note) {
    return beams.getOrDefault(note, List.of());
  }

  // Grace notes may come between the notes of a group, and have separate beams.
  private void group(List<MeasureItem> items, boolean graces) {
    List<NoteOrRest> group = new ArrayList<>();
    for (MeasureItem item : items) {
      if (item instanceof NoteOrRest note && note.grace() == graces) {
        if (!note.joined() || levels(note) == 0) {
          finish(group);
        }
        if (levels(note) > 0) {
          group.add(note);
        }
      } else if (graces && item instanceof NoteOrRest) {
        finish(group);
      }
    }
    finish(group);
  }

  private static int levels(NoteOrRest note) {
    return note.rest() || note.values().size() != 1 ? 0 : note.values().get(0).beams();
  }

  private void finish(List<NoteOrRest> group) {
    if (group.size() > 1) {
      for (int i = 0; i < group.size(); i++) {
        List<String> own = new ArrayList<>();
        for (int level = 1; level <= levels(group.get(i)); level++) {
          own.add(beam(group, i, level));
        }
        beams.put(group.get(i), own);
      }
    }
    group.clear();
  }

  private static String beam(List<NoteOrRest> group, int i, int level) {
    boolean before = i > 0 && levels(group.get(i - 1)) >= level;
    boolean after = i + 1 < group.size() && levels(group.get(i + 1)) >= level;
    if (before && after) {
      return "continue";
    }
    if (before || after) {
      return before ? "end" : "begin";
    }
    return i > 0 ? "backward hook" : "forward hook";
  }
}
