package fingering.exercise;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.writing.PlainClef;
import fingering.musicxml.writing.PlainNote;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.Optional;

/**
 * The clefs in which an instrument is written, the usual one first: a measure goes into a higher
 * one where it would need more than three ledger lines (common practice). Not safe for use by many
 * threads.
 */
public final class ClefChoice {
  /** Letters from the top line to a note on the third ledger line. */
  private static final int THREE_LEDGERS = 6;

  private final ImmutableList<PlainClef> clefs;
  private Optional<PlainClef> now = Optional.empty();

  /** The staff of an instrument, before its first measure. */
  public ClefChoice(Instrument instrument) {
    clefs =
        switch (instrument.id()) {
          case "viola" -> ImmutableList.of(PlainClef.ALTO, PlainClef.TREBLE);
          case "cello", "bass" ->
              ImmutableList.of(PlainClef.BASS, PlainClef.TENOR, PlainClef.TREBLE);
          default -> ImmutableList.of(PlainClef.TREBLE);
        };
  }

  /** The clef to be set before the next measure; empty where that in force will do. */
  public Optional<PlainClef> next(ImmutableList<PlainNote> notes) {
    int highest =
        notes.stream()
            .flatMap(note -> note.pitches().stream())
            .max(Comparator.comparingInt(Pitch::letterNumber))
            .orElseThrow()
            .letterNumber();
    PlainClef wanted =
        clefs.stream()
            .filter(clef -> highest - topLine(clef).letterNumber() <= THREE_LEDGERS)
            .findFirst()
            .orElse(clefs.get(clefs.size() - 1));
    if (now.filter(wanted::equals).isPresent()) {
      return Optional.empty();
    }
    now = Optional.of(wanted);
    return now;
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
