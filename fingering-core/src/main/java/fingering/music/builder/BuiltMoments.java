package fingering.music.builder;

import com.google.common.collect.ImmutableList;
import fingering.music.GraceNotes;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.PlayingStyle;
import fingering.music.Surroundings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** The moments of a passage built in code: the times, what is held, the rests and the styles. */
final class BuiltMoments {
  private static final Comparator<Note> LOWEST_FIRST =
      Comparator.comparingInt(Note::midi).thenComparing(Note::address);

  /**
   * A note or chord as written, in order of time.
   *
   * @param start quarter notes from the start of the passage
   * @param notes the notes that begin; empty if all notes are tied to earlier ones
   * @param grace whether it is a grace note
   * @param joined whether a slur joins it to the event before
   * @param plucked whether it is plucked
   * @param style the style that the part asks for
   */
  record Event(
      BigFraction start,
      ImmutableList<Note> notes,
      boolean grace,
      boolean joined,
      boolean plucked,
      PlayingStyle style) {}

  private final ImmutableList<Event> events;
  private final TempoClock clock;
  private final List<Moment> moments = new ArrayList<>();
  private final List<Note> sounding = new ArrayList<>();
  private long silentFrom;

  private BuiltMoments(ImmutableList<Event> events, TempoClock clock) {
    this.events = events;
    this.clock = clock;
  }

  /** The moments of some events. */
  static ImmutableList<Moment> of(ImmutableList<Event> events, TempoClock clock) {
    BuiltMoments built = new BuiltMoments(events, clock);
    int next = 0;
    for (int from = 0; from < events.size(); from = next) {
      next = from + 1;
      while (next < events.size() && events.get(next).start().equals(events.get(from).start())) {
        next++;
      }
      if (!events.get(next - 1).notes().isEmpty()) {
        built.together(from, next - 1);
      }
    }
    return Moment.withSurroundings(built.moments);
  }

  /** Adds the grace notes from one index on, and the main event after them. */
  private void together(int from, int main) {
    BigFraction start = events.get(main).start();
    sounding.removeIf(note -> note.end().compareTo(start) <= 0);
    long micros = clock.micros(start);
    BigFraction end =
        events.get(main).notes().stream().map(Note::end).max(BigFraction::compareTo).orElseThrow();
    long length = clock.micros(end) - micros;
    int graces = main - from;
    double grace =
        GraceNotes.micros(graces, clock.quarterMicros(start), Math.min(gap(main), length));
    for (int k = 0; k < graces; k++) {
      long begins = micros + Math.round(k * grace);
      moment(from + k, begins, micros + Math.round((k + 1) * grace) - begins);
    }
    long late = Math.round(graces * grace);
    moment(main, micros + late, length - late);
    sounding.addAll(events.get(main).notes());
  }

  /** Microseconds from an event to the next event at which a note begins. */
  private long gap(int e) {
    for (int later = e + 1; later < events.size(); later++) {
      if (!events.get(later).notes().isEmpty()) {
        return clock.micros(events.get(later).start()) - clock.micros(events.get(e).start());
      }
    }
    return Long.MAX_VALUE;
  }

  private void moment(int e, long start, long length) {
    Event event = events.get(e);
    List<Note> held = new ArrayList<>(sounding);
    held.removeIf(note -> event.notes().stream().anyMatch(n -> n.midi() == note.midi()));
    boolean first = moments.isEmpty();
    moments.add(
        new Moment(
            ImmutableList.sortedCopyOf(LOWEST_FIRST, event.notes()),
            ImmutableList.sortedCopyOf(LOWEST_FIRST, held),
            start,
            length,
            first ? 0 : Math.max(0, start - silentFrom),
            !first && event.joined(),
            event.grace(),
            event.plucked(),
            style(e),
            Surroundings.ALONE));
    silentFrom = Math.max(silentFrom, start + length);
  }

  /** Under a slur, notes are not detached; words for the bow mean nothing to plucked notes. */
  private PlayingStyle style(int e) {
    Event event = events.get(e);
    boolean slurred = event.joined() || (e + 1 < events.size() && events.get(e + 1).joined());
    boolean plain = event.plucked() || (slurred && event.style() == PlayingStyle.DETACHED);
    return plain ? PlayingStyle.PLAIN : event.style();
  }
}
