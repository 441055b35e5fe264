package fingering.abc.reading;

import fingering.abc.reading.MeasureItem.Tuplet;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import fingering.abc.syntax.TupletSpecifier;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Tuplets and broken rhythm, which change the lengths of notes. */
final class RhythmModifiers {
  private static final int MOST_BROKEN = 3;

  private record Broken(
      LineCursor start, PendingNote before, BigFraction first, BigFraction second) {}

  private final Repairs repairs;
  private Optional<TupletSpecifier> tuplet = Optional.empty();
  private int left;

  /** The last note of the open tuplet. */
  private Optional<PendingNote> last = Optional.empty();

  private Optional<Broken> broken = Optional.empty();

  RhythmModifiers(Repairs repairs) {
    this.repairs = repairs;
  }

  /** Begins a tuplet. */
  void begin(TupletSpecifier specifier) {
    endTuplet("the next tuplet");
    tuplet = Optional.of(specifier);
    left = specifier.notes();
  }

  /**
   * Reads the next marks of broken rhythm.
   *
   * @param before the previous note, chord or rest of the measure, if there is one
   */
  void breakAt(LineCursor cursor, Optional<PendingNote> before) {
    LineCursor start = cursor.copy();
    char mark = cursor.peek();
    int marks = cursor.takeWhile(c -> c == mark).length();
    if (before.isEmpty() || broken.isPresent()) {
      repairs.add(start, "'%s' belongs between two notes; it was left out".formatted(mark));
      return;
    }
    if (marks > MOST_BROKEN) {
      repairs.add(start, "a broken rhythm has one to three signs; this one was left out");
      return;
    }
    BigFraction shorter = BigFraction.of(1, 1 << marks);
    BigFraction longer = BigFraction.of(2).subtract(shorter);
    broken =
        Optional.of(
            mark == '>'
                ? new Broken(start, before.get(), longer, shorter)
                : new Broken(start, before.get(), shorter, longer));
  }

  /** Applies to the next note, chord or rest that is not a grace note. */
  void add(PendingNote pending) {
    broken.ifPresent(
        waiting -> {
          if (!waiting.before.length.equals(pending.length)) {
            repairs.add(
                waiting.start, "a broken rhythm needs two notes of equal length; it was left out");
            return;
          }
          waiting.before.length = waiting.before.length.multiply(waiting.first);
          pending.length = pending.length.multiply(waiting.second);
        });
    broken = Optional.empty();
    tuplet.ifPresent(
        specifier -> {
          pending.tuplet =
              Optional.of(
                  new Tuplet(
                      specifier.actual(),
                      specifier.normal(),
                      left == specifier.notes(),
                      left == 1));
          left--;
          last = Optional.of(pending);
        });
    if (left == 0) {
      tuplet = Optional.empty();
      last = Optional.empty();
    }
  }

  /** Ends a measure. Its last tuplet ends with the notes it has; a broken rhythm is left out. */
  void barLine() {
    broken.ifPresent(
        waiting ->
            repairs.add(
                waiting.start,
                "no note of this measure follows the broken rhythm; it was left out"));
    broken = Optional.empty();
    endTuplet("the bar line");
  }

  private void endTuplet(String before) {
    tuplet.ifPresent(
        specifier -> {
          repairs.add(
              specifier.start(),
              "the tuplet that begins here has only %d of its %d notes before %s; it was read with these"
                  .formatted(specifier.notes() - left, specifier.notes(), before));
          last.flatMap(note -> note.tuplet)
              .ifPresent(part -> last.get().tuplet = Optional.of(part.asLast()));
        });
    tuplet = Optional.empty();
    last = Optional.empty();
  }
}
