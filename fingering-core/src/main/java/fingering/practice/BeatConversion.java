package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.BeatUnit;
import fingering.music.Tempo;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The same tempo counted in another note value. Half = 72 is quarter = 144; dotted quarter = 40 is
 * eighth = 120 (arithmetic of note values).
 */
public final class BeatConversion {
  private static final ImmutableList<String> VALUES =
      ImmutableList.of("breve", "whole", "half", "quarter", "eighth", "16th", "32nd", "64th");

  /** Clicks slower than this are subdivided (common practice, no source). */
  private static final BigDecimal SLOW = BigDecimal.valueOf(60);

  /** Clicks faster than this, the end of the traditional scale, are drawn together. */
  private static final BigDecimal FAST = BigDecimal.valueOf(208);

  /** Decimals to which a tempo is told that has no end of them in the other value. */
  private static final int DECIMALS = 2;

  private BeatConversion() {}

  /** The same tempo in another value, rounded down to two decimals where it has more. */
  public static Tempo in(Tempo tempo, BeatUnit unit) {
    BigFraction perMinute = tempo.quartersPerMinute().divide(unit.quarters());
    return new Tempo(unit, perMinute.bigDecimalValue(DECIMALS, RoundingMode.DOWN));
  }

  /**
   * The tempo in the value that a metronome is best set to: subdivided below 60 a minute, so that
   * the clicks hold the beat together, and in a longer value above 208.
   */
  public static Tempo clicks(Tempo tempo) {
    Tempo told = tempo;
    while (told.perMinute().compareTo(SLOW) < 0) {
      Optional<BeatUnit> shorter = subdivided(told.unit());
      if (shorter.isEmpty()) {
        return told;
      }
      told = in(told, shorter.get());
    }
    while (told.perMinute().compareTo(FAST) > 0) {
      int value = value(told.unit());
      if (value <= 0) {
        return told;
      }
      told = in(told, new BeatUnit(VALUES.get(value - 1), told.unit().dots()));
    }
    return told;
  }

  /** Halves of a plain value, thirds of a dotted one. */
  private static Optional<BeatUnit> subdivided(BeatUnit unit) {
    int value = value(unit);
    return value < 0 || value + 1 == VALUES.size() || unit.dots() > 1
        ? Optional.empty()
        : Optional.of(new BeatUnit(VALUES.get(value + 1), 0));
  }

  private static int value(BeatUnit unit) {
    return VALUES.indexOf(unit.name());
  }
}
