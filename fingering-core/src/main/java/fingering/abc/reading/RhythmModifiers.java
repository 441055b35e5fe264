package fingering.abc.reading;

import fingering.abc.reading.MeasureItem.Tuplet;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.NoteValue;
import fingering.abc.syntax.TupletSpecifier;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Tuplets and broken rhythm, which change the lengths of notes. */
final class RhythmModifiers {
  private static final int MOST_BROKEN = 3;

  private record Broken(
      LineCursor start, PendingNote before, BigFraction first, BigFraction second) {}

  private Optional<TupletSpecifier> tuplet = Optional.empty();
  private int left;
  private Optional<Broken> broken = Optional.empty();

  /** Begins a tuplet. */
  void begin(TupletSpecifier specifier) {
    tuplet.ifPresent(
        open -> {
          throw specifier
              .start()
              .error(
                  "a tuplet begins here, but the previous one still needs %d more notes: write them first."
                      .formatted(left));
        });
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
      throw start.error("'%s' belongs between two notes: write a note before it.".formatted(mark));
    }
    if (marks > MOST_BROKEN || cursor.peek() == '<' || cursor.peek() == '>') {
      throw start.error(
          "a broken rhythm has one to three equal signs: write >, >>, >>>, <, << or <<<.");
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
            throw waiting.start.error(
                "a broken rhythm needs two notes of equal length, but these have %s and %s of a whole note: write the lengths out."
                    .formatted(
                        NoteValue.fraction(waiting.before.length),
                        NoteValue.fraction(pending.length)));
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
        });
    if (left == 0) {
      tuplet = Optional.empty();
    }
  }

  /**
   * Ends a measure.
   *
   * @throws AbcException if a tuplet or broken rhythm is incomplete
   */
  void barLine() {
    broken.ifPresent(
        waiting -> {
          throw waiting.start.error(
              "no note of this measure follows the broken rhythm: write one before the bar line.");
        });
    tuplet.ifPresent(
        specifier -> {
          throw specifier
              .start()
              .error(
                  "the tuplet that begins here has only %d of its %d notes before the bar line: write all of them."
                      .formatted(specifier.notes() - left, specifier.notes()));
        });
  }
}
