package fingering.scoring;

import fingering.fingerboard.Grip;

/** A transition rule made of its description and a measure. */
record NamedTransitionRule(String id, String name, String explanation, String unit, Measure measure)
    implements TransitionRule {
  /** Measures how much of something a passing has. */
  interface Measure {
    long amount(Passing passing, Grip before, Grip now);
  }

  @Override
  public long amount(Passing passing, Grip before, Grip now) {
    return measure.amount(passing, before, now);
  }
}
