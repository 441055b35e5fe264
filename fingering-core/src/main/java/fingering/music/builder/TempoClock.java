package fingering.music.builder;

import fingering.music.TempoChange;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Converts times in quarter notes to microseconds at some tempi. */
final class TempoClock {
  private static final double MINUTE_MICROS = 60e6;

  /** A stretch in one tempo, in which a quarter note takes {@code quarter} microseconds. */
  private record Stretch(double start, double startMicros, double quarter) {
    double micros(double place) {
      return startMicros + (place - start) * quarter;
    }
  }

  private final List<Stretch> stretches = new ArrayList<>();

  /**
   * A clock that starts at 0.
   *
   * @param tempi the tempi in order of time, the first at time 0
   */
  TempoClock(List<TempoChange> tempi) {
    Stretch last = new Stretch(0, 0, 0);
    for (TempoChange change : tempi) {
      double start = change.start().doubleValue();
      double quarter = MINUTE_MICROS / change.tempo().quartersPerMinute().doubleValue();
      last = new Stretch(start, last.micros(start), quarter);
      stretches.add(last);
    }
  }

  /** The microseconds from the start to a time in quarter notes. */
  long micros(BigFraction place) {
    double at = place.doubleValue();
    return Math.round(stretchAt(at).micros(at));
  }

  /** The length of a quarter note at a time in quarter notes, in microseconds. */
  double quarterMicros(BigFraction place) {
    return stretchAt(place.doubleValue()).quarter();
  }

  private Stretch stretchAt(double place) {
    Stretch current = stretches.get(0);
    for (Stretch stretch : stretches) {
      current = stretch.start() <= place ? stretch : current;
    }
    return current;
  }
}
