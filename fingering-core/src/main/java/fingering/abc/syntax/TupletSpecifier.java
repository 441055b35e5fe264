package fingering.abc.syntax;

import java.util.OptionalInt;

/**
 * The tuplet specifier before the notes of a tuplet (ABC 2.1, section 'Duplets, triplets,
 * quadruplets, etc.').
 *
 * @param actual number of notes in the tuplet ratio: 3 in 3:2
 * @param normal number of normal notes that take the same time: 2 in 3:2
 * @param notes number of notes, chords and rests in the tuplet
 * @param start its position
 */
public record TupletSpecifier(int actual, int normal, int notes, LineCursor start) {
  private static final int MOST_SHORT = 9;
  private static final int MOST = 64;

  /**
   * Reads the next tuplet specifier, which begins with an opening bracket and a digit.
   *
   * @throws AbcException if it is not valid
   */
  public static TupletSpecifier read(LineCursor cursor, AbcMeter meter) {
    LineCursor start = cursor.copy();
    cursor.take('(');
    int actual = cursor.number();
    OptionalInt normal = OptionalInt.empty();
    OptionalInt notes = OptionalInt.empty();
    if (cursor.take(':')) {
      normal = optional(cursor);
      if (cursor.take(':')) {
        notes = optional(cursor);
      }
    }
    if (normal.isEmpty() && (actual < 2 || actual > MOST_SHORT)) {
      throw start.error(
          "a tuplet of %d needs the number of notes in whose time it is played: write both numbers, as in (%d:8."
              .formatted(actual, actual));
    }
    TupletSpecifier sign =
        new TupletSpecifier(
            actual, normal.orElseGet(() -> usual(actual, meter)), notes.orElse(actual), start);
    if (!sign.valid()) {
      throw start.error(
          "the numbers of a tuplet are from 1 to %d: write a tuplet such as (3 or (5:4:5."
              .formatted(MOST));
    }
    return sign;
  }

  private static OptionalInt optional(LineCursor cursor) {
    return cursor.atNumber() ? OptionalInt.of(cursor.number()) : OptionalInt.empty();
  }

  private static int usual(int actual, AbcMeter meter) {
    return switch (actual) {
      case 2, 4, 8 -> 3;
      case 3, 6 -> 2;
      default -> meter.compound() ? 3 : 2;
    };
  }

  private boolean valid() {
    return actual >= 1
        && actual <= MOST
        && normal >= 1
        && normal <= MOST
        && notes >= 1
        && notes <= MOST;
  }
}
