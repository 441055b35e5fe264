package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Iterables;
import fingering.music.ChangedSlurs;
import fingering.music.ChangedSlurs.Slur;
import fingering.music.MeasureBeat;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.SlurChanges;
import fingering.music.SlurChanges.Change;
import fingering.musicxml.SelectionException;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.reading.SlurSpans.Span;
import fingering.musicxml.timeline.PartTimeline.Slot;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Changes the slurs of a part. A new slur replaces the slurs with which it shares a note. Slurs
 * from grace notes to their main note stay, because they are no bowing of their own.
 */
final class SlurEdits {
  /** The most slurs that a file can number at once. */
  private static final int MOST_NUMBERS = 16;

  private record Located(int slot, WrittenNote note) {}

  /** The slots of a new slur, or of a note whose slurs are removed. */
  private record Reach(Change change, int first, int last) {
    boolean meets(Reach other) {
      return first <= other.last && last >= other.first;
    }

    String text() {
      return change
          .to()
          .map(to -> "the slur from %s to %s".formatted(change.from(), to))
          .orElse("%s: %s".formatted(change.from(), change.end()));
    }
  }

  private final ImmutableList<Slot> slots;
  private final ImmutableList<Passage> music;
  private final ImmutableList<Span> printed;
  private final Map<NoteAddress, Located> notes = new HashMap<>();
  private final List<Reach> reaches = new ArrayList<>();
  private final Set<Span> removed = new LinkedHashSet<>();
  private final List<Span> added = new ArrayList<>();

  private SlurEdits(
      ImmutableList<Slot> slots,
      Predicate<WrittenNote> inVoice,
      ImmutableList<Passage> music,
      ImmutableList<Span> printed) {
    this.slots = slots;
    this.music = music;
    this.printed = printed;
    for (int i = 0; i < slots.size(); i++) {
      for (WrittenNote note : slots.get(i).notes()) {
        if (inVoice.test(note)) {
          notes.put(note.address(), new Located(i, note));
        }
      }
    }
  }

  /** The slurs of a part after the changes, and what has changed. */
  record Changed(ImmutableList<Span> spans, ChangedSlurs slurs) {}

  /**
   * Changes slurs. Looks for a place in the measures of the request, then in the whole part, since
   * a measure of another movement may have the same number.
   *
   * @param request the slurs to change, and the measures
   * @param slots the notes of the part
   * @param inVoice the notes whose slurs are changed
   * @param reading reads the music with its printed slurs
   * @throws FingeringException if no note begins at a place, or a new slur cannot be played; the
   *     message is one sentence
   */
  static Changed of(
      PassageRequest request,
      ImmutableList<Slot> slots,
      Predicate<WrittenNote> inVoice,
      Function<PassageRequest, Passage> reading) {
    ImmutableList<Span> printed = SlurSpans.of(slots, inVoice);
    if (request.slurs().isEmpty()) {
      return new Changed(printed, ChangedSlurs.NONE);
    }
    PassageRequest plain = request.withSlurs(SlurChanges.NONE);
    ImmutableList.Builder<Passage> music = ImmutableList.builder();
    music.add(reading.apply(plain));
    if (request.measures().isPresent()) {
      music.add(reading.apply(plain.wholePart()));
    }
    SlurEdits edits = new SlurEdits(slots, inVoice, music.build(), printed);
    request.slurs().changes().forEach(edits::apply);
    return edits.changed();
  }

  private Changed changed() {
    return new Changed(
        ImmutableList.<Span>builder()
            .addAll(Iterables.filter(printed, span -> !removed.contains(span)))
            .addAll(added)
            .build(),
        new ChangedSlurs(
            removed.stream().map(Span::slur).collect(ImmutableList.toImmutableList()),
            added.stream().map(Span::slur).collect(ImmutableList.toImmutableList())));
  }

  private void apply(Change change) {
    Moment begin = moment(change.from());
    if (change.to().isEmpty()) {
      int last =
          begin.starting().stream()
              .mapToInt(note -> tied(located(note)).slot())
              .max()
              .orElseThrow();
      remove(new Reach(change, first(begin).slot(), last));
      return;
    }
    Moment end = moment(change.to().get());
    if (first(end).slot() <= first(begin).slot()) {
      throw new SelectionException(
          "In 'slurs', %s."
              .formatted(Change.backwards(change.from(), change.to().get()).getMessage()));
    }
    Located start = first(begin);
    Located stop = first(end);
    for (Located one : inOrder(begin)) {
      Optional<Located> same =
          inOrder(end).stream()
              .filter(other -> other.note().voice().equals(one.note().voice()))
              .findFirst();
      if (same.isPresent()) {
        start = one;
        stop = same.get();
        break;
      }
    }
    stop = tied(stop);
    refuseRest(change, start.slot(), stop.slot());
    remove(new Reach(change, start.slot(), stop.slot()));
    added.add(
        new Span(
            start.slot(),
            stop.slot(),
            new Slur(start.note().address(), stop.note().address(), number(start, stop))));
  }

  /** Removes the slurs that share a note with a change. */
  private void remove(Reach reach) {
    for (Reach other : reaches) {
      boolean bothOff = reach.change().to().isEmpty() && other.change().to().isEmpty();
      if (!bothOff && reach.meets(other)) {
        throw new SelectionException(
            "In 'slurs', %s and %s share a note: leave one of them out."
                .formatted(other.text(), reach.text()));
      }
    }
    reaches.add(reach);
    for (Span span : printed) {
      if (span.touches(reach.first(), reach.last()) && !ornament(span)) {
        removed.add(span);
      }
    }
  }

  private Moment moment(MeasureBeat place) {
    try {
      for (Passage measures : music) {
        if (measures.measures().stream().anyMatch(m -> m.number().equals(place.measure()))) {
          return measures.moments().get(place.indexIn(measures));
        }
      }
      Passage whole = music.get(music.size() - 1);
      return whole.moments().get(place.indexIn(whole));
    } catch (FingeringException e) {
      throw new FingeringException("In 'slurs', at %s: %s".formatted(place, e.getMessage()), e);
    }
  }

  private Located located(Note note) {
    return Optional.ofNullable(notes.get(note.address())).orElseThrow();
  }

  private Located first(Moment moment) {
    return inOrder(moment).get(0);
  }

  /** The notes of a moment, in the order of the file. */
  private ImmutableList<Located> inOrder(Moment moment) {
    return moment.starting().stream()
        .sorted((one, other) -> one.address().compareTo(other.address()))
        .map(this::located)
        .collect(ImmutableList.toImmutableList());
  }

  /** The last of the notes to which a note is tied. */
  private Located tied(Located note) {
    Located last = note;
    for (int i = note.slot() + 1; i < slots.size(); i++) {
      BigFraction end = last.note().end();
      if (!last.note().lines().tieStart() || Quarters.compare(slots.get(i).start(), end) > 0) {
        break;
      }
      for (WrittenNote next : slots.get(i).notes()) {
        if (next.start().equals(end)
            && next.lines().tieStop()
            && next.voice().equals(note.note().voice())
            && next.pitch().equals(note.note().pitch())) {
          last = new Located(i, next);
        }
      }
    }
    return last;
  }

  private static boolean isAt(Slot one, Slot other) {
    return one.start().equals(other.start());
  }

  /** Whether a slur only joins grace notes to their main note. */
  private boolean ornament(Span span) {
    return slots.get(span.start()).grace() && isAt(slots.get(span.start()), slots.get(span.stop()));
  }

  private void refuseRest(Change change, int first, int last) {
    BigFraction silentFrom = BigFraction.ZERO;
    for (int i = 0; i <= last; i++) {
      Slot slot = slots.get(i);
      int here = i;
      if (i > first
          && Quarters.compare(slot.start(), silentFrom) > 0
          && printed.stream().noneMatch(span -> span.start() < here && here <= span.stop())) {
        throw new SelectionException(
            "In 'slurs', the slur from %s to %s runs over a rest: end it before the rest."
                .formatted(change.from(), change.end()));
      }
      for (WrittenNote note : slot.notes()) {
        if (notes.containsKey(note.address()) && Quarters.compare(note.end(), silentFrom) > 0) {
          silentFrom = note.end();
        }
      }
    }
  }

  /** A number that no other slur of these measures has, in any voice. */
  private int number(Located start, Located stop) {
    Set<Integer> used = new HashSet<>();
    for (Span span : added) {
      if (span.slur().from().measure() <= stop.note().measure()
          && span.slur().to().measure() >= start.note().measure()) {
        used.add(span.slur().number());
      }
    }
    for (Slot slot : slots.subList(measureStart(start), measureEnd(stop))) {
      for (WrittenNote note : slot.notes()) {
        note.lines().slurStarts().stream()
            .filter(number -> stays(number, note.address(), Slur::from))
            .forEach(used::add);
        note.lines().slurStops().stream()
            .filter(number -> stays(number, note.address(), Slur::to))
            .forEach(used::add);
      }
    }
    return IntStream.rangeClosed(1, MOST_NUMBERS)
        .filter(number -> !used.contains(number))
        .findFirst()
        .orElse(MOST_NUMBERS);
  }

  private boolean stays(int number, NoteAddress note, Function<Slur, NoteAddress> end) {
    return removed.stream()
        .map(Span::slur)
        .noneMatch(slur -> slur.number() == number && end.apply(slur).equals(note));
  }

  private int measureStart(Located note) {
    int slot = note.slot();
    while (slot > 0 && measure(slot - 1) == measure(note.slot())) {
      slot--;
    }
    return slot;
  }

  private int measureEnd(Located note) {
    int slot = note.slot();
    while (slot < slots.size() && measure(slot) == measure(note.slot())) {
      slot++;
    }
    return slot;
  }

  private int measure(int slot) {
    return slots.get(slot).notes().get(0).measure();
  }
}
