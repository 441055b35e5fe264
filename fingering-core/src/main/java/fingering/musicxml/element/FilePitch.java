package fingering.musicxml.element;

import fingering.tables.FingeringException;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the pitch of a note, rounded to semitones. */
public final class FilePitch {
  /** Well above the range of all instruments. */
  private static final BigDecimal MOST_SEMITONES = BigDecimal.valueOf(1_000);

  private FilePitch() {}

  /** Returns the pitch; empty if it cannot be read. */
  public static Optional<Pitch> of(org.audiveris.proxymusic.Pitch pitch) {
    OptionalInt alter = semitones(alter(pitch));
    if (pitch.getStep() == null || alter.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Pitch(Letter.valueOf(pitch.getStep().name()), alter.getAsInt(), pitch.getOctave()));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  /** Returns whether the pitch is not one of whole semitones. */
  public static boolean isMicrotone(org.audiveris.proxymusic.Pitch pitch) {
    return alter(pitch).stripTrailingZeros().scale() > 0;
  }

  private static BigDecimal alter(org.audiveris.proxymusic.Pitch pitch) {
    return pitch.getAlter() == null ? BigDecimal.ZERO : pitch.getAlter();
  }

  /** Returns the nearest number of semitones; empty if no instrument has as many. */
  static OptionalInt semitones(BigDecimal value) {
    return TempoMark.isOutOfRange(value) || value.abs().compareTo(MOST_SEMITONES) > 0
        ? OptionalInt.empty()
        : OptionalInt.of(value.setScale(0, RoundingMode.HALF_UP).intValueExact());
  }
}
