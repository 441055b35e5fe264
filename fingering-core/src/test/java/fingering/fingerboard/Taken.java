package fingering.fingerboard;

import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.List;

/** Takes notes by name: {@code Taken.on("viola").by("D3", 4, "1", "1st")}. */
public final class Taken {
  private final Fingerboard fingerboard;

  private Taken(Fingerboard fingerboard) {
    this.fingerboard = fingerboard;
  }

  public static Taken on(String instrument) {
    return on(instrument, LeftHand.MEDIUM);
  }

  /** The same under another hand. */
  public static Taken on(String instrument, LeftHand hand) {
    return on(Instruments.standard().named(instrument), hand);
  }

  static Taken on(Instrument instrument, LeftHand hand) {
    return new Taken(Fingerboard.of(instrument, hand));
  }

  public Fingerboard fingerboard() {
    return fingerboard;
  }

  /** Every placement of the pitch on that string by that finger in that position. */
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

  /** Every placement of the pitch on that string, whatever the hand. */
  public List<Placement> on(String pitch, int string) {
    return fingerboard.placements(Pitch.parse(pitch)).stream()
        .filter(placement -> placement.string() == string)
        .toList();
  }

  /** The easiest of them, by stretch. */
  public Grip by(String pitch, int string, String finger, String position) {
    return by(PitchRequest.of(Pitch.parse(pitch)), string, finger, position);
  }

  /** The same with what a note asks for besides its pitch. */
  public Grip by(PitchRequest note, int string, String finger, String position) {
    return all(note, string, finger, position).stream()
        .min(java.util.Comparator.comparingDouble(Placement::stretch))
        .map(Grip::of)
        .orElseThrow(
            () ->
                new AssertionError(
                    note.pitch()
                        + " is not taken on "
                        + string
                        + " by "
                        + finger
                        + " in "
                        + position));
  }
}
