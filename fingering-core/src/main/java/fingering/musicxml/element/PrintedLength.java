package fingering.musicxml.element;

import fingering.music.BeatUnit;
import fingering.tables.FingeringException;
import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.TimeModification;
import org.jspecify.annotations.Nullable;

/** The length that a note shows: its note value, with its dots and its tuplet. */
public final class PrintedLength {
  /** The most notes of a tuplet; more are a mistake (common practice, no source). */
  private static final int MOST = 64;

  private PrintedLength() {}

  /** Returns the length in quarter notes; empty if the note shows none that can be read. */
  public static Optional<BigFraction> of(Note note) {
    if (note.getType() == null || note.getType().getValue() == null) {
      return Optional.empty();
    }
    try {
      BigFraction value =
          new BeatUnit(note.getType().getValue().strip(), note.getDot().size()).quarters();
      return Optional.of(tuplet(note.getTimeModification(), value));
    } catch (FingeringException e) {
      // A value shorter than a 64th, or not a note value.
      return Optional.empty();
    }
  }

  private static BigFraction tuplet(@Nullable TimeModification tuplet, BigFraction value) {
    return tuplet == null
            || !plausible(tuplet.getActualNotes())
            || !plausible(tuplet.getNormalNotes())
        ? value
        : value.multiply(tuplet.getNormalNotes()).divide(tuplet.getActualNotes());
  }

  private static boolean plausible(@Nullable BigInteger notes) {
    return notes != null && notes.signum() > 0 && notes.compareTo(BigInteger.valueOf(MOST)) <= 0;
  }
}
