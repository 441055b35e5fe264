package fingering.tempo;

import fingering.music.Tempo;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Rounds tempi to metronome settings. */
final class MetronomeMarks {
  /** Beats per minute above every setting. */
  private static final double TOO_FAST = 1000;

  /** Tempi below this many beats per minute are rounded to a tenth. */
  private static final double SLOW = 20;

  private static final BigDecimal SLOWEST = new BigDecimal("0.1");

  /** The relative error of times in whole microseconds. */
  private static final double TOLERANCE = 1e-6;

  private MetronomeMarks() {}

  /** A multiple of a tempo, rounded down; empty if it is above every metronome mark. */
  static Optional<Tempo> atMost(Tempo tempo, double factor) {
    double perMinute = tempo.perMinute().doubleValue() * factor * (1 + TOLERANCE);
    if (perMinute >= TOO_FAST) {
      return Optional.empty();
    }
    BigDecimal rounded =
        BigDecimal.valueOf(perMinute).setScale(perMinute < SLOW ? 1 : 0, RoundingMode.DOWN);
    return Optional.of(new Tempo(tempo.unit(), rounded.max(SLOWEST)));
  }
}
