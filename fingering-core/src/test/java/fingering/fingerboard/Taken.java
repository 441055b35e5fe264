package fingering.fingerboard;

import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.List;

/** Finds placements by name: {@code Taken.on("viola").by("D3", 4, "1", "1st")}. */
public final class Taken {
  private final Fingerboard fingerboard;

  private Taken(Fingerboard fingerboard) {
    this.fingerboard = fingerboard;
  }

  public static Taken on(String instrument) {
    return on(instrument, LeftHand.MEDIUM);
  }

  /** The same with another hand. */
  public static Taken on(String instrument, LeftHand hand) {
    return on(Instruments.standard().named(instrument), hand);
  }

  static Taken on(Instrument instrument, LeftHand hand) {
    return new Taken(Fingerboard.of(instrument, hand));
  }

  public Fingerboard fingerboard() {
    return fingerboard;
  }

  /** All placements of a pitch on a string with a finger in a position. */
  public List<Placement> all(String pitch, int string, String finger, String position) {
    return all(PitchRequest.of(Pitch.parse(pitch)), string, finger, position);
  }

  List<Placement> all(PitchRequest note, int string, String finger, String position) {
    return fingerboard.placements(note).stream()
        .filter(
            p ->
                p.string() == string
                    && p.finger().symbol().equals(finger)
                    && p.frame().position().equals(Position.parse(position)))
        .toList();
  }

  /** All placements of a pitch on a string. */
  public List<Placement> on(String pitch, int string) {
    return fingerboard.placements(Pitch.parse(pitch)).stream()
        .filter(placement -> placement.string() == string)
        .toList();
  }

  /** The grip with the least stretch. */
  public Grip by(String pitch, int string, String finger, String position) {
    return by(PitchRequest.of(Pitch.parse(pitch)), string, finger, position);
  }

  /** The same for a note with a trill or harmonic. */
  public Grip by(PitchRequest note, int string, String finger, String position) {
    return all(note, string, finger, position).stream()
        .min(java.util.Comparator.comparingDouble(Placement::stretch))
        .map(Grip::of)
        .orElseThrow(
            () ->
                new AssertionError(
                    note.pitch()
                        + " has no placement on string "
                        + string
                        + " with finger "
                        + finger
                        + " in "
                        + position));
  }
}
