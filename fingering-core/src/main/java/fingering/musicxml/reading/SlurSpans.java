package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.Slot;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Finds the slots that a slur joins to the previous slot. */
final class SlurSpans {

  private record SlurKey(String voice, int number) {}

  private record End(int slot, int number, boolean start) {}

  private final Predicate<WrittenNote> wanted;
  private final int[] deltas;
  private final List<End> unpaired = new ArrayList<>();

  private SlurSpans(int slots, Predicate<WrittenNote> wanted) {
    this.wanted = wanted;
    deltas = new int[slots + 1];
  }

  /**
   * Returns the indices of the slots after the start of a slur, up to its end.
   *
   * @param wanted selects the notes whose slurs count
   */
  static BitSet joined(ImmutableList<Slot> slots, Predicate<WrittenNote> wanted) {
    SlurSpans spans = new SlurSpans(slots.size(), wanted);
    spans.pairWithinVoices(slots);
    spans.pairAcrossVoices();
    BitSet joined = new BitSet(slots.size());
    int open = 0;
    for (int i = 0; i < slots.size(); i++) {
      open += spans.deltas[i];
      joined.set(i, open > 0);
    }
    return joined;
  }

  // Numbers identify slurs in document order, so two voices may use the same number at once.
  private void pairWithinVoices(ImmutableList<Slot> slots) {
    Map<SlurKey, Integer> open = new HashMap<>();
    for (int i = 0; i < slots.size(); i++) {
      List<WrittenNote> notes = slots.get(i).notes().stream().filter(wanted).toList();
      for (WrittenNote note : notes) {
        for (int number : note.lines().slurStops()) {
          Integer start = open.remove(new SlurKey(note.voice(), number));
          if (start == null) {
            unpaired.add(new End(i, number, false));
          } else {
            span(start, i);
          }
        }
      }
      for (WrittenNote note : notes) {
        for (int number : note.lines().slurStarts()) {
          Integer lost = open.put(new SlurKey(note.voice(), number), i);
          if (lost != null) {
            unpaired.add(new End(lost, number, true));
          }
        }
      }
    }
    open.forEach((key, start) -> unpaired.add(new End(start, key.number(), true)));
  }

  // Slurs from one voice to another.
  private void pairAcrossVoices() {
    unpaired.sort(Comparator.comparingInt(End::slot).thenComparing(End::start));
    Map<Integer, Integer> open = new HashMap<>();
    for (End end : unpaired) {
      if (end.start()) {
        open.put(end.number(), end.slot());
        continue;
      }
      Integer start = open.remove(end.number());
      if (start != null) {
        span(start, end.slot());
      }
    }
  }

  private void span(int start, int stop) {
    deltas[start + 1]++;
    deltas[stop + 1]--;
  }
}
