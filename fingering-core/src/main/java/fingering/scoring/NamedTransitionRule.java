package fingering.scoring;

import fingering.fingerboard.Grip;

/** A transition rule made of its description and a measure. */
record NamedTransitionRule(String id, String name, String explanation, String unit, Measure measure)
    implements TransitionRule {
  /** Measures how much of something a passing has. */
  interface Measure {
    /** Finds nothing. */
    Measure NEVER = (passing, before, now) -> 0;

    long amount(Passing passing, Grip before, Grip now);
  }

  /** The same kind of rule, which charges in proportion to the pace. */
  record Paced(String id, String name, String explanation, String unit, Measure measure)
      implements PacedTransitionRule {
    @Override
    public long share(Passing passing, Grip before, Grip now) {
      return measure.amount(passing, before, now);
    }
  }

  /** The same kind of rule, which charges the time that is lacking. */
  record Hurried(
      String id, String name, String explanation, String unit, long unitMicros, Measure needed)
      implements HurriedTransitionRule {
    @Override
    public long needed(Passing passing, Grip before, Grip now) {
      return needed.amount(passing, before, now);
    }
  }

  @Override
  public boolean idle() {
    return measure == Measure.NEVER;
  }

  @Override
  public long amount(Passing passing, Grip before, Grip now) {
    return measure.amount(passing, before, now);
  }
}
