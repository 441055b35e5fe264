package fingering.musicxml.element;

import fingering.music.BeatUnit;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Metronome;
import org.audiveris.proxymusic.Sound;

/**
 * A tempo mark and its position in the score.
 *
 * @param measure index of the measure, from 0
 * @param onset quarter notes from the start of the measure
 * @param tempo the tempo from there on
 * @param playback whether it comes from the playback data of the file, not from the printed mark
 */
public record TempoMark(int measure, BigFraction onset, Tempo tempo, boolean playback) {
  private static final int MOST_DIGITS = 40;
  private static final Pattern LEADING_NUMBER = Pattern.compile("\\D{0,8}?(\\d+(?:[.,]\\d+)?).*");

  /** Returns the tempo of a playback element, if it has one. */
  public static Optional<Tempo> of(Sound sound) {
    return Optional.ofNullable(sound.getTempo())
        .flatMap(perMinute -> checked(BeatUnit.QUARTER, perMinute));
  }

  /** Returns the tempo of a printed metronome mark if it gives a note value and a number. */
  public static Optional<Tempo> of(Metronome metronome) {
    if (metronome.getBeatUnit() == null
        || metronome.getPerMinute() == null
        || metronome.getPerMinute().getValue() == null
        || !metronome.getBeatUnitTied().isEmpty()) {
      return Optional.empty();
    }
    Matcher number = LEADING_NUMBER.matcher(metronome.getPerMinute().getValue().strip());
    if (!number.matches()) {
      return Optional.empty();
    }
    BeatUnit unit;
    try {
      unit = new BeatUnit(metronome.getBeatUnit().strip(), metronome.getBeatUnitDot().size());
    } catch (FingeringException e) {
      // A note value that nobody counts in, such as a 128th.
      return Optional.empty();
    }
    return checked(unit, new BigDecimal(number.group(1).replace(',', '.')));
  }

  /** Returns whether a number has more digits or decimal places than any score needs. */
  public static boolean isOutOfRange(BigDecimal value) {
    return Math.abs((long) value.scale()) > MOST_DIGITS || value.precision() > MOST_DIGITS;
  }

  private static Optional<Tempo> checked(BeatUnit unit, BigDecimal perMinute) {
    if (isOutOfRange(perMinute) || perMinute.compareTo(BigDecimal.ONE) < 0) {
      // Some programs write 0, or nearly 0, to stop playback at a fermata.
      return Optional.empty();
    }
    try {
      return Optional.of(new Tempo(unit, perMinute));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }
}
