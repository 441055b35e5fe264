package fingering.tempo;

/**
 * The least time that something takes.
 *
 * @param cause what most of it is for
 * @param micros microseconds, over 0
 */
record MinimumTime(LimitCause cause, long micros) {
  /** The longer of the two. */
  MinimumTime or(MinimumTime other) {
    return other.micros > micros ? other : this;
  }

  /** A share of it. */
  MinimumTime times(double share) {
    return new MinimumTime(cause, Math.round(micros * share));
  }

  /** Adds up a need; what adds most is its cause, or, where nothing is added, its ground. */
  static final class Sum {
    private final LimitCause ground;
    private LimitCause cause;
    private long most;
    private long micros;

    Sum(LimitCause ground, long micros) {
      this.ground = ground;
      this.micros = micros;
      cause = ground;
    }

    Sum add(LimitCause added, long more) {
      if (more > most) {
        most = more;
        cause = added;
      }
      micros += more;
      return this;
    }

    MinimumTime need() {
      return new MinimumTime(most > 0 ? cause : ground, micros);
    }
  }
}
