package fingering.plan;

import fingering.tables.Position;

/**
 * Consecutive notes for which the hand stays in one position.
 *
 * @param position the position
 * @param from number of the first measure, as printed
 * @param to number of the last measure, as printed
 * @param notes the number of stopped notes
 */
public record Stay(Position position, String from, String to, int notes) {
  /** The measures, as printed: {@code 17} or {@code 17–24}. */
  public String measures() {
    return from.equals(to) ? from : from + "–" + to;
  }
}
