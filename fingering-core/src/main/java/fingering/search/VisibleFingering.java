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
 * What is seen of a grip: by a player, or by a teacher who looks for another way through a passage.
 *
 * @param stops how each note is taken, in the order of the grip's placements
 */
public record VisibleFingering(ImmutableList<Stop> stops) {

  /** How closely one looks. */
  public enum Grain {
    /**
     * What a player sees: strings, fingers and where the hand stands. Grips that look alike differ
     * only in where the hand waits while a string sounds open, or in the shape of the hand around
     * the fingers that stop.
     */
    FINGERS,
    /**
     * What a teacher sees: on which string each note begins and, stopped, in which position. The
     * finger is no difference, nor is a note that is only held.
     */
    PLACES
  }

  /**
   * How one note is taken.
   *
   * @param string number of the string, 1 being the highest
   * @param position the position of the hand; empty when open
   * @param fingering how the string is stopped; empty when open, or where one does not look so
   *     closely
   */
  public record Stop(int string, Optional<Position> position, Optional<Fingering> fingering) {}

  /**
   * How a string is stopped.
   *
   * @param finger what stops it
   * @param semitones semitones of the stopped place above the open string
   * @param first place of the first finger of the hand at rest, in semitones above the open string
   */
  public record Fingering(Finger finger, int semitones, double first) {}

  /** What a player sees of that grip. */
  public static VisibleFingering of(Grip grip) {
    return new VisibleFingering(
        grip.placements().stream()
            .map(VisibleFingering::fingered)
            .collect(ImmutableList.toImmutableList()));
  }

  /** What is seen of the grip of a moment, looking so closely. */
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
