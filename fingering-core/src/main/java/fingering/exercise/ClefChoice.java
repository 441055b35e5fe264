package fingering.exercise;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.writing.PlainClef;
import fingering.musicxml.writing.PlainNote;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.Optional;

/**
 * Chooses the clef of each measure for an instrument. It is the usual clef, or a higher one if a
 * measure would need more than three ledger lines (common practice). {@link #next} must be called
 * once for each measure, in order. Not thread-safe.
 */
public final class ClefChoice {
  /** Letter names from the top line to a note on the third ledger line. */
  private static final int THREE_LEDGERS = 6;

  /** The clefs of the instrument, lowest and most usual first. */
  private final ImmutableList<PlainClef> clefs;

  private Optional<PlainClef> current = Optional.empty();

  /** Starts before the first measure of an instrument. */
  public ClefChoice(Instrument instrument) {
    clefs =
        switch (instrument.id()) {
          case "viola" -> ImmutableList.of(PlainClef.ALTO, PlainClef.TREBLE);
          case "cello", "bass" ->
              ImmutableList.of(PlainClef.BASS, PlainClef.TENOR, PlainClef.TREBLE);
          default -> ImmutableList.of(PlainClef.TREBLE);
        };
  }

  /**
   * The clef to write before the next measure; empty if the current one stays.
   *
   * @param notes the notes and rests of the measure; a measure of rests keeps the clef
   */
  public Optional<PlainClef> next(ImmutableList<PlainNote> notes) {
    PlainClef suitable =
        notes.stream()
            .flatMap(note -> note.pitches().stream())
            .max(Comparator.comparingInt(Pitch::letterNumber))
            .map(this::suitable)
            .or(() -> current)
            .orElse(clefs.get(0));
    if (current.filter(suitable::equals).isPresent()) {
      return Optional.empty();
    }
    current = Optional.of(suitable);
    return current;
  }

  private PlainClef suitable(Pitch highest) {
    return clefs.stream()
        .filter(clef -> highest.letterNumber() - topLine(clef).letterNumber() <= THREE_LEDGERS)
        .findFirst()
        .orElse(clefs.get(clefs.size() - 1));
  }

  private static Pitch topLine(PlainClef clef) {
    return Pitch.parse(
        switch (clef) {
          case TREBLE -> "F5";
          case ALTO -> "G4";
          case TENOR -> "E4";
          case BASS -> "A3";
        });
  }
}
