package fingering.fingerboard;

import fingering.music.Music;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.List;
import java.util.stream.Collectors;

/** The grips of chords, written as finger and string from the lowest note up: {@code 1@4 2@3}. */
final class Chords {
  private final Fingerboard fingerboard;

  private Chords(Fingerboard fingerboard) {
    this.fingerboard = fingerboard;
  }

  static Chords on(String instrument) {
    return on(instrument, LeftHand.MEDIUM);
  }

  static Chords on(String instrument, LeftHand hand) {
    return on(Instruments.standard().named(instrument), hand);
  }

  static Chords on(Instrument instrument, LeftHand hand) {
    return new Chords(Fingerboard.of(instrument, hand));
  }

  /** All grips that one hand can hold, for an event in the notation of {@link Music}. */
  List<Grip> held(String event) {
    return new GripFinder(fingerboard)
        .grips(Music.on(fingerboard.instrument().id()).notes(event).moments().get(0)).stream()
            .filter(grip -> !grip.divided())
            .toList();
  }

  /** The grips in any position. */
  List<String> fingers(String notes) {
    return held(notes + "/1").stream().map(Chords::fingers).toList();
  }

  /** The grips in one position. */
  List<String> in(String position, String notes) {
    return held(notes + "/1").stream()
        .filter(grip -> grip.frame().position().equals(Position.parse(position)))
        .map(Chords::fingers)
        .toList();
  }

  static String fingers(Grip grip) {
    return grip.placements().stream()
        .map(placement -> placement.finger().symbol() + "@" + placement.string())
        .collect(Collectors.joining(" "));
  }
}
