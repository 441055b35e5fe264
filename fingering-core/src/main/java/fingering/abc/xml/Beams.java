package fingering.abc.xml;

import fingering.abc.reading.MeasureItem;
import fingering.abc.reading.MeasureItem.Sound;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;

/** Beams notes that are typed together (ABC 2.1, section 'Beams'). */
final class Beams {
  // Two notes of a measure may be alike in everything.
  private final IdentityHashMap<Sound, List<String>> beams = new IdentityHashMap<>();

  /** Beams the notes of a measure. */
  Beams(List<MeasureItem> items) {
    group(items, false);
    group(items, true);
  }

  /** What each beam of a note does, the longest beam first; empty for a note without. */
  List<String> of(Sound sound) {
    return beams.getOrDefault(sound, List.of());
  }

  // Grace notes stand between the notes of a group and have beams of their own.
  private void group(List<MeasureItem> items, boolean graces) {
    List<Sound> group = new ArrayList<>();
    for (MeasureItem item : items) {
      if (item instanceof Sound sound && sound.grace() == graces) {
        if (!sound.joined() || levels(sound) == 0) {
          finish(group);
        }
        if (levels(sound) > 0) {
          group.add(sound);
        }
      } else if (graces && item instanceof Sound) {
        finish(group);
      }
    }
    finish(group);
  }

  private static int levels(Sound sound) {
    return sound.rest() || sound.values().size() != 1 ? 0 : sound.values().get(0).beams();
  }

  private void finish(List<Sound> group) {
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

  private static String beam(List<Sound> group, int i, int level) {
    boolean before = i > 0 && levels(group.get(i - 1)) >= level;
    boolean behind = i + 1 < group.size() && levels(group.get(i + 1)) >= level;
    if (before && behind) {
      return "continue";
    }
    if (before || behind) {
      return before ? "end" : "begin";
    }
    return i > 0 ? "backward hook" : "forward hook";
  }
}
