package fingering.tempo;

/**
 * The least time that something takes.
 *
 * @param cause what most of it is for
 * @param micros microseconds, over 0
 */
record Need(Cause cause, long micros) {
  /** The longer of the two. */
  Need or(Need other) {
    return other.micros > micros ? other : this;
  }

  /** A share of it. */
  Need times(double share) {
    return new Need(cause, Math.round(micros * share));
  }

  /** Adds up a need; what adds most is its cause, or, where nothing is added, its ground. */
  static final class Sum {
    private final Cause ground;
    private Cause cause;
    private long most;
    private long micros;

    Sum(Cause ground, long micros) {
      this.ground = ground;
      this.micros = micros;
      cause = ground;
    }

    Sum add(Cause added, long more) {
      if (more > most) {
        most = more;
        cause = added;
      }
      micros += more;
      return this;
    }

    Need need() {
      return new Need(most > 0 ? cause : ground, micros);
    }
  }
}
