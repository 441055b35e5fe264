package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.tables.Position;
import java.util.Optional;

/**
 * The visible part of a grip: two plans are different for a reader only if it differs somewhere.
 *
 * @param stops the visible part of each placement, in the order of the grip
 */
public record VisibleFingering(ImmutableList<Stop> stops) {

  /** The level of detail at which grips are compared. */
  public enum Grain {
    /**
     * Strings, fingers and the place of the hand, as a player sees them. Grips in the same class
     * differ only in where the hand waits during an open string, or in the shape of the hand around
     * the fingers that stop.
     */
    FINGERS,
    /**
     * The string of each note that begins and, if it is stopped, the position, as a teacher
     * compares fingerings. Fingers and held notes make no difference.
     */
    PLACES
  }

  /**
   * The visible part of a placement.
   *
   * @param string number of the string, 1 for the highest
   * @param position the position of the hand; empty for an open string
   * @param fingering the stopping finger and its place; empty for an open string, and with {@link
   *     Grain#PLACES}
   */
  public record Stop(int string, Optional<Position> position, Optional<Fingering> fingering) {}

  /**
   * A finger on a string, and where the hand is.
   *
   * @param finger the finger
   * @param semitones semitones of the stopped place above the open string
   * @param first semitones of the first finger of the hand at rest above the open string
   */
  public record Fingering(Finger finger, int semitones, double first) {}

  /** The visible part of a grip with {@link Grain#FINGERS}. */
  public static VisibleFingering of(Grip grip) {
    return new VisibleFingering(
        grip.placements().stream()
            .map(VisibleFingering::fingered)
            .collect(ImmutableList.toImmutableList()));
  }

  /** The visible part of the grip of a moment. */
  public static VisibleFingering of(Moment moment, Grip grip, Grain grain) {
    return grain == Grain.FINGERS ? of(grip) : places(moment, grip);
  }

  private static VisibleFingering places(Moment moment, Grip grip) {
    ImmutableList<Note> notes = grip.notes(moment);
    ImmutableList.Builder<Stop> stops = ImmutableList.builder();
    for (int i = 0; i < notes.size(); i++) {
      if (moment.starting().contains(notes.get(i))) {
        Placement placement = grip.placements().get(i);
        stops.add(new Stop(placement.string(), position(placement), Optional.empty()));
      }
    }
    return new VisibleFingering(stops.build());
  }

  private static Stop fingered(Placement placement) {
    Optional<Fingering> fingering =
        placement.open()
            ? Optional.empty()
            : Optional.of(
                new Fingering(
                    placement.finger(), placement.semitones(), placement.frame().first()));
    return new Stop(placement.string(), position(placement), fingering);
  }

  private static Optional<Position> position(Placement placement) {
    return placement.open() ? Optional.empty() : Optional.of(placement.frame().position());
  }
}
