package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.BeatUnit;
import fingering.music.Tempo;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Converts tempi between note values: half = 72 is quarter = 144, and dotted quarter = 40 is eighth
 * = 120 (arithmetic of note values).
 */
public final class BeatConversion {
  private static final ImmutableList<String> VALUES =
      ImmutableList.of("breve", "whole", "half", "quarter", "eighth", "16th", "32nd", "64th");

  /** Clicks slower than this are subdivided (common practice, no source). */
  private static final BigDecimal SLOW = BigDecimal.valueOf(60);

  /** Above this, the end of the traditional scale, the metronome clicks a longer value. */
  private static final BigDecimal FAST = BigDecimal.valueOf(208);

  /** Decimals kept where the converted tempo is not a whole number. */
  private static final int DECIMALS = 2;

  private BeatConversion() {}

  /** Returns the same tempo counted in another value, rounded down to two decimals. */
  public static Tempo in(Tempo tempo, BeatUnit unit) {
    BigFraction perMinute = tempo.quartersPerMinute().divide(unit.quarters());
    return new Tempo(unit, perMinute.bigDecimalValue(DECIMALS, RoundingMode.DOWN));
  }

  /**
   * Returns the tempo in the note value that the metronome should click: a shorter value below 60
   * beats a minute, because slow clicks are hard to follow, and a longer one above 208.
   */
  public static Tempo clicks(Tempo tempo) {
    Tempo clicks = tempo;
    while (clicks.perMinute().compareTo(SLOW) < 0) {
      Optional<BeatUnit> shorter = subdivided(clicks.unit());
      if (shorter.isEmpty()) {
        return clicks;
      }
      clicks = in(clicks, shorter.get());
    }
    while (clicks.perMinute().compareTo(FAST) > 0) {
      int value = value(clicks.unit());
      if (value <= 0) {
        return clicks;
      }
      clicks = in(clicks, new BeatUnit(VALUES.get(value - 1), clicks.unit().dots()));
    }
    return clicks;
  }

  /** Returns half of a plain value, or a third of a dotted one; empty if there is none. */
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
