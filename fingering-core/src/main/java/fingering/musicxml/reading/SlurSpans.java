package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.ChangedSlurs.Slur;
import fingering.music.NoteAddress;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.Slot;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Finds the slurs of a part, and the slots that they join. */
final class SlurSpans {

  /**
   * A slur.
   *
   * @param start the index of the slot where it starts
   * @param stop the index of the slot where it ends, after that
   * @param slur its notes and its number
   */
  record Span(int start, int stop, Slur slur) {
    /** Whether it has a slot in common with some slots. */
    boolean touches(int first, int last) {
      return start <= last && stop >= first;
    }
  }

  private record SlurKey(String voice, int number) {}

  private record End(int slot, NoteAddress note, int number, boolean start) {}

  private final Predicate<WrittenNote> wanted;
  private final ImmutableList.Builder<Span> spans = ImmutableList.builder();
  private final List<End> unpaired = new ArrayList<>();

  private SlurSpans(Predicate<WrittenNote> wanted) {
    this.wanted = wanted;
  }

  /**
   * Returns the slurs of some slots.
   *
   * @param wanted selects the notes whose slurs count
   */
  static ImmutableList<Span> of(ImmutableList<Slot> slots, Predicate<WrittenNote> wanted) {
    SlurSpans spans = new SlurSpans(wanted);
    spans.pairWithinVoices(slots);
    spans.pairAcrossVoices();
    return spans.spans.build();
  }

  /**
   * Returns the indices of the slots that a slur joins to the previous slot: those after the start
   * of a slur, up to its end.
   */
  static BitSet joined(List<Span> spans) {
    BitSet joined = new BitSet();
    for (Span span : spans) {
      joined.set(span.start() + 1, span.stop() + 1);
    }
    return joined;
  }

  // Numbers identify slurs in document order, so two voices may use the same number at once.
  private void pairWithinVoices(ImmutableList<Slot> slots) {
    Map<SlurKey, End> open = new HashMap<>();
    for (int i = 0; i < slots.size(); i++) {
      List<WrittenNote> notes = slots.get(i).notes().stream().filter(wanted).toList();
      for (WrittenNote note : notes) {
        for (int number : note.lines().slurStops()) {
          End start = open.remove(new SlurKey(note.voice(), number));
          End stop = new End(i, note.address(), number, false);
          if (start == null) {
            unpaired.add(stop);
          } else {
            span(start, stop);
          }
        }
      }
      for (WrittenNote note : notes) {
        for (int number : note.lines().slurStarts()) {
          End lost =
              open.put(new SlurKey(note.voice(), number), new End(i, note.address(), number, true));
          if (lost != null) {
            unpaired.add(lost);
          }
        }
      }
    }
    unpaired.addAll(open.values());
  }

  // Slurs from one voice to another.
  private void pairAcrossVoices() {
    unpaired.sort(Comparator.comparingInt(End::slot).thenComparing(End::start));
    Map<Integer, End> open = new HashMap<>();
    for (End end : unpaired) {
      if (end.start()) {
        open.put(end.number(), end);
        continue;
      }
      End start = open.remove(end.number());
      if (start != null) {
        span(start, end);
      }
    }
  }

  private void span(End start, End stop) {
    if (start.slot() < stop.slot()) {
      spans.add(
          new Span(start.slot(), stop.slot(), new Slur(start.note(), stop.note(), stop.number())));
    }
  }
}
