package fingering.abc.reading;

import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The open slurs. Slurs may be nested, and one may begin where another ends (ABC 2.1). */
final class Slurs {
  /** The highest number of slurs that are open at once (MusicXML 3.1, number-level). */
  private static final int MOST = 6;

  private record Open(LineCursor start, int number, PendingNote first) {}

  private final Repairs repairs;
  private final List<LineCursor> waiting = new ArrayList<>();
  private final List<Open> open = new ArrayList<>();

  Slurs(Repairs repairs) {
    this.repairs = repairs;
  }

  /** Reads an opening bracket. */
  void begin(LineCursor start) {
    if (waiting.size() + open.size() >= MOST) {
      repairs.add(start, "more than %d slurs are open here; this one was left out".formatted(MOST));
      return;
    }
    waiting.add(start);
  }

  /** Begins the pending slurs at a note or chord. */
  void add(PendingNote pending) {
    for (LineCursor start : waiting) {
      int number = 1;
      while (isTaken(number)) {
        number++;
      }
      open.add(new Open(start, number, pending));
      pending.slurStarts.add(number);
    }
    waiting.clear();
  }

  private boolean isTaken(int number) {
    return open.stream().anyMatch(slur -> slur.number == number);
  }

  /**
   * Reads a closing bracket.
   *
   * @param last the previous note or chord
   */
  void end(LineCursor place, Optional<PendingNote> last) {
    // In "(c d (e) f g)" the bracket after e ends the slur from c.
    for (int i = open.size() - 1; i >= 0; i--) {
      Open slur = open.get(i);
      if (last.isPresent() && slur.first != last.get() && waiting.isEmpty()) {
        last.get().slurStops.add(slur.number);
        open.remove(i);
        return;
      }
    }
    if (open.isEmpty() && waiting.isEmpty()) {
      repairs.add(place, "the slur that ends here has no beginning; it was left out");
      return;
    }
    repairs.add(place, "a slur ends at the note where it begins; it was left out");
    if (waiting.isEmpty()) {
      leaveOut(open.remove(open.size() - 1));
    } else {
      waiting.remove(waiting.size() - 1);
    }
  }

  /** Ends the tune. Open slurs are left out. */
  void finish() {
    for (Open slur : open) {
      leaveOut(slur);
      unfinished(slur.start);
    }
    waiting.forEach(this::unfinished);
  }

  private static void leaveOut(Open slur) {
    slur.first.slurStarts.remove((Integer) slur.number);
  }

  private void unfinished(LineCursor start) {
    repairs.add(start, "the slur that begins here has no end; it was left out");
  }
}
