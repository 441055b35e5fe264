package fingering.abc.reading;

import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.LineCursor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The open slurs. Slurs may be nested, and one may begin where another ends (ABC 2.1). */
final class Slurs {
  /** The highest number of slurs that are open at once (MusicXML 3.1, number-level). */
  private static final int MOST = 6;

  private record Open(LineCursor start, int number, PendingNote first) {}

  private final List<LineCursor> waiting = new ArrayList<>();
  private final List<Open> open = new ArrayList<>();

  /** Reads an opening bracket. */
  void begin(LineCursor start) {
    if (waiting.size() + open.size() >= MOST) {
      throw start.error("more than %d slurs are open here: close some with ).".formatted(MOST));
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
    throw place.error(
        open.isEmpty() && waiting.isEmpty()
            ? "this slur has no beginning: write ( before its first note."
            : "a slur ends at the note where it begins: put at least two notes in it.");
  }

  /**
   * Ends the tune.
   *
   * @throws AbcException if a slur is open
   */
  void finish() {
    if (!open.isEmpty()) {
      throw unfinished(open.get(0).start);
    }
    if (!waiting.isEmpty()) {
      throw unfinished(waiting.get(0));
    }
  }

  private static AbcException unfinished(LineCursor start) {
    return start.error("the slur that begins here has no end: write ) after its last note.");
  }
}
