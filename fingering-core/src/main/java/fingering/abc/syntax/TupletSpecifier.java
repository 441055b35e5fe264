package fingering.abc.syntax;

import java.util.Optional;
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
   * Reads the next tuplet specifier, which begins with an opening bracket and a digit; empty if it
   * is not valid.
   */
  public static Optional<TupletSpecifier> read(LineCursor cursor, AbcMeter meter, Repairs repairs) {
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
      repairs.add(
          start,
          "a tuplet of %d needs the number of notes in whose time it is played, as in (13:8; it was left out"
              .formatted(actual));
      return Optional.empty();
    }
    TupletSpecifier sign =
        new TupletSpecifier(
            actual, normal.orElseGet(() -> usual(actual, meter)), notes.orElse(actual), start);
    if (!sign.valid()) {
      repairs.add(
          start,
          "the numbers of a tuplet are from 1 to %d, as in (3 or (5:4:5; it was left out"
              .formatted(MOST));
      return Optional.empty();
    }
    return Optional.of(sign);
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
