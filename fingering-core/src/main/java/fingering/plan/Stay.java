package fingering.plan;

import fingering.tables.Position;

/**
 * A run of notes for which the hand remains in one position.
 *
 * @param position the position
 * @param from number of the measure in which it begins
 * @param to number of the measure in which it ends
 * @param notes stopped notes in it
 */
public record Stay(Position position, String from, String to, int notes) {
  /** The measures, as printed: {@code 17} or {@code 17–24}. */
  public String measures() {
    return from.equals(to) ? from : from + "–" + to;
  }
}
