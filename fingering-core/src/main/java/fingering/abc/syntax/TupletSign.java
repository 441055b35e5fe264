package fingering.abc.syntax;

import java.util.OptionalInt;

/**
 * The beginning of a tuplet (ABC 2.1, section 'Duplets, triplets, quadruplets, etc.').
 *
 * @param actual so many notes ...
 * @param normal ... in the time of so many
 * @param notes how many notes, chords and rests it holds
 * @param start where it is typed
 */
public record TupletSign(int actual, int normal, int notes, LineCursor start) {
  private static final int MOST_SHORT = 9;
  private static final int MOST = 64;

  /** Reads the tuplet that comes next, an opening bracket and a digit. */
  public static TupletSign read(LineCursor cursor, AbcMeter meter) {
    LineCursor start = cursor.back(0);
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
      throw start.wrong(
          "a tuplet of %d does not say in whose time it is played: write the number too, as in (%d:8."
              .formatted(actual, actual));
    }
    TupletSign sign =
        new TupletSign(
            actual, normal.orElseGet(() -> usual(actual, meter)), notes.orElse(actual), start);
    if (!sign.sane()) {
      throw start.wrong(
          "a tuplet takes numbers from 1 to %d: write one such as (3 or (5:4:5.".formatted(MOST));
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

  private boolean sane() {
    return actual >= 1
        && actual <= MOST
        && normal >= 1
        && normal <= MOST
        && notes >= 1
        && notes <= MOST;
  }
}
