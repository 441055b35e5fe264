package fingering.abc.reading;

import fingering.abc.reading.MeasureItem.Tuplet;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.NoteValue;
import fingering.abc.syntax.TupletSign;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Tuplets and broken rhythm: what changes the length of notes around. */
final class RhythmModifiers {
  private static final int MOST_BROKEN = 3;

  private record Broken(
      LineCursor start, PendingNote before, BigFraction first, BigFraction second) {}

  private Optional<TupletSign> tuplet = Optional.empty();
  private int left;
  private Optional<Broken> broken = Optional.empty();

  /** Begins a tuplet. */
  void begin(TupletSign sign) {
    tuplet.ifPresent(
        open -> {
          throw sign.start()
              .wrong(
                  "a tuplet begins here before %d more notes have ended the one before: give that its notes first."
                      .formatted(left));
        });
    tuplet = Optional.of(sign);
    left = sign.notes();
  }

  /**
   * Reads the marks of broken rhythm that come next.
   *
   * @param before the note, chord or rest before them, if there is one in the measure
   */
  void breakAt(LineCursor cursor, Optional<PendingNote> before) {
    LineCursor start = cursor.back(0);
    char mark = cursor.peek();
    int marks = cursor.takeWhile(c -> c == mark).length();
    if (before.isEmpty()) {
      throw start.wrong("'%s' stands between two notes: put a note before it.".formatted(mark));
    }
    if (broken.isPresent()) {
      throw start.wrong("'%s' stands between two notes: put a note before it.".formatted(mark));
    }
    if (marks > MOST_BROKEN || cursor.peek() == '<' || cursor.peek() == '>') {
      throw start.wrong("a rhythm is broken by one to three signs of a kind: write > or <.");
    }
    BigFraction shorter = BigFraction.of(1, 1 << marks);
    BigFraction longer = BigFraction.of(2).subtract(shorter);
    broken =
        Optional.of(
            mark == '>'
                ? new Broken(start, before.get(), longer, shorter)
                : new Broken(start, before.get(), shorter, longer));
  }

  /** Takes the next note, chord or rest that has a length. */
  void add(PendingNote draft) {
    broken.ifPresent(
        waiting -> {
          if (!waiting.before.length.equals(draft.length)) {
            throw waiting.start.wrong(
                "a rhythm is broken between two notes of one length, and these have %s and %s of a whole note: write the lengths out."
                    .formatted(
                        NoteValue.fraction(waiting.before.length),
                        NoteValue.fraction(draft.length)));
          }
          waiting.before.length = waiting.before.length.multiply(waiting.first);
          draft.length = draft.length.multiply(waiting.second);
        });
    broken = Optional.empty();
    tuplet.ifPresent(
        sign -> {
          draft.tuplet =
              Optional.of(
                  new Tuplet(sign.actual(), sign.normal(), left == sign.notes(), left == 1));
          left--;
        });
    if (left == 0) {
      tuplet = Optional.empty();
    }
  }

  /** Ends a measure. */
  void barLine() {
    broken.ifPresent(
        waiting -> {
          throw waiting.start.wrong(
              "no note of this measure follows the sign of a broken rhythm: put one before the bar line.");
        });
    tuplet.ifPresent(
        sign -> {
          throw sign.start()
              .wrong(
                  "the tuplet that begins here has %d of its %d notes before the bar line: give it all of them."
                      .formatted(sign.notes() - left, sign.notes()));
        });
  }
}
