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

/** Finds the slots that a slur joins to the slot before. */
final class SlurSpans {

  private record Curve(String voice, int number) {}

  private record End(int slot, int number, boolean start) {}

  private final Predicate<WrittenNote> wanted;
  private final int[] deltas;
  private final List<End> alone = new ArrayList<>();

  private SlurSpans(int slots, Predicate<WrittenNote> wanted) {
    this.wanted = wanted;
    deltas = new int[slots + 1];
  }

  /**
   * Indices of the slots that lie behind the start of some slur and not behind its end.
   *
   * @param wanted the notes whose slurs count
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

  // A number tells slurs apart in document order, so two voices may use one at the same time.
  private void pairWithinVoices(ImmutableList<Slot> slots) {
    Map<Curve, Integer> open = new HashMap<>();
    for (int i = 0; i < slots.size(); i++) {
      List<WrittenNote> notes = slots.get(i).notes().stream().filter(wanted).toList();
      for (WrittenNote note : notes) {
        for (int number : note.lines().slurStops()) {
          Integer start = open.remove(new Curve(note.voice(), number));
          if (start == null) {
            alone.add(new End(i, number, false));
          } else {
            span(start, i);
          }
        }
      }
      for (WrittenNote note : notes) {
        for (int number : note.lines().slurStarts()) {
          Integer lost = open.put(new Curve(note.voice(), number), i);
          if (lost != null) {
            alone.add(new End(lost, number, true));
          }
        }
      }
    }
    open.forEach((curve, start) -> alone.add(new End(start, curve.number(), true)));
  }

  // Slurs from one voice to another.
  private void pairAcrossVoices() {
    alone.sort(Comparator.comparingInt(End::slot).thenComparing(End::start));
    Map<Integer, Integer> open = new HashMap<>();
    for (End end : alone) {
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
