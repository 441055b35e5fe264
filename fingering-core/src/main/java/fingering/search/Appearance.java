package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.tables.Position;
import java.util.Optional;

/**
 * What a player sees of a grip. Grips that look alike differ only in where the hand waits while a
 * string sounds open, or in the shape of the hand around the fingers that stop.
 *
 * @param stops how each note is taken, in the order of the grip's placements
 */
public record Appearance(ImmutableList<Stop> stops) {

  /**
   * How one note is taken.
   *
   * @param string number of the string, 1 being the highest
   * @param finger what stops it
   * @param semitones semitones of the stopped place above the open string, 0 when open
   * @param hand where the hand stands; empty when open
   */
  public record Stop(int string, Finger finger, int semitones, Optional<Hand> hand) {}

  /**
   * Where the hand stands.
   *
   * @param position the position's name
   * @param first place of the first finger of the hand at rest, in semitones above the open string
   */
  public record Hand(Position position, double first) {}

  /** What a player sees of that grip. */
  public static Appearance of(Grip grip) {
    return new Appearance(
        grip.placements().stream().map(Appearance::stop).collect(ImmutableList.toImmutableList()));
  }

  private static Stop stop(Placement placement) {
    Optional<Hand> hand =
        placement.open()
            ? Optional.empty()
            : Optional.of(new Hand(placement.frame().position(), placement.frame().first()));
    return new Stop(placement.string(), placement.finger(), placement.semitones(), hand);
  }
}
