package fingering.tempo;

import fingering.music.Tempo;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Figures that a metronome can be set to. */
final class MetronomeMarks {
  private static final double FASTEST = 1000;

  /** Below this a tenth of a beat a minute is told. */
  private static final double FINE = 20;

  private static final BigDecimal SLOWEST = new BigDecimal("0.1");

  /** What reckoning with fractions of a microsecond may lose, as a share. */
  private static final double ROUNDING = 1e-6;

  private MetronomeMarks() {}

  /** The multiple of a tempo, rounded down; empty where no mark goes so high. */
  static Optional<Tempo> atMost(Tempo tempo, double factor) {
    double perMinute = tempo.perMinute().doubleValue() * factor * (1 + ROUNDING);
    if (perMinute >= FASTEST) {
      return Optional.empty();
    }
    BigDecimal rounded =
        BigDecimal.valueOf(perMinute).setScale(perMinute < FINE ? 1 : 0, RoundingMode.DOWN);
    return Optional.of(new Tempo(tempo.unit(), rounded.max(SLOWEST)));
  }
}
