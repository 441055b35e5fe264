package fingering.abc.reading;

import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.LineCursor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Slurs that are open; they may nest, and one may begin where another ends (ABC 2.1). */
final class Slurs {
  /** So many slurs at once can be told apart by number (MusicXML 3.1, number-level). */
  private static final int MOST = 6;

  private record Open(LineCursor start, int number, PendingNote first) {}

  private final List<LineCursor> waiting = new ArrayList<>();
  private final List<Open> open = new ArrayList<>();

  /** Takes an opening bracket. */
  void begin(LineCursor start) {
    if (waiting.size() + open.size() >= MOST) {
      throw start.wrong("more than %d slurs are open here: close some with ).".formatted(MOST));
    }
    waiting.add(start);
  }

  /** Takes a note or chord, at which the slurs that wait begin. */
  void add(PendingNote draft) {
    for (LineCursor start : waiting) {
      int number = 1;
      while (isTaken(number)) {
        number++;
      }
      open.add(new Open(start, number, draft));
      draft.slurStarts.add(number);
    }
    waiting.clear();
  }

  private boolean isTaken(int number) {
    return open.stream().anyMatch(slur -> slur.number == number);
  }

  /**
   * Takes a closing bracket.
   *
   * @param last the note or chord before it
   */
  void end(LineCursor place, Optional<PendingNote> last) {
    // In "(c d (e) f g)" the bracket behind e ends the slur from c.
    for (int i = open.size() - 1; i >= 0; i--) {
      Open slur = open.get(i);
      if (last.isPresent() && slur.first != last.get() && waiting.isEmpty()) {
        last.get().slurStops.add(slur.number);
        open.remove(i);
        return;
      }
    }
    throw place.wrong(
        open.isEmpty() && waiting.isEmpty()
            ? "a slur ends here that begins nowhere: put ( before its first note."
            : "a slur ends here at the note at which it begins: let it hold two notes at least.");
  }

  /** Ends the tune. */
  void finish() {
    if (!open.isEmpty()) {
      throw unfinished(open.get(0).start);
    }
    if (!waiting.isEmpty()) {
      throw unfinished(waiting.get(0));
    }
  }

  private static AbcException unfinished(LineCursor start) {
    return start.wrong("the slur that begins here ends nowhere: put ) behind its last note.");
  }
}
