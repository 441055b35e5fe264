package fingering.tempo;

/**
 * The minimum time that a movement takes.
 *
 * @param cause the main component of the movement
 * @param micros microseconds, above 0
 */
record MinimumTime(LimitCause cause, long micros) {
  /** The longer of two times; this one if they are equal. */
  MinimumTime longer(MinimumTime other) {
    return other.micros > micros ? other : this;
  }

  /** The time multiplied by a factor. */
  MinimumTime times(double factor) {
    return new MinimumTime(cause, Math.round(micros * factor));
  }

  /**
   * Adds components to a base time. The cause of the total is the largest component, or that of the
   * base time if none is above 0.
   */
  static final class Sum {
    private LimitCause cause;
    private long largest;
    private long micros;

    Sum(LimitCause base, long micros) {
      cause = base;
      this.micros = micros;
    }

    Sum add(LimitCause component, long componentMicros) {
      if (componentMicros > largest) {
        largest = componentMicros;
        cause = component;
      }
      micros += componentMicros;
      return this;
    }

    MinimumTime total() {
      return new MinimumTime(cause, micros);
    }
  }
}
