package fingering.scoring;

import fingering.fingerboard.Grip;

/** A note rule made of its description and a measure. */
record NamedNoteRule(String id, String name, String explanation, String unit, Measure measure)
    implements NoteRule {
  /** Measures how much of something a grip has. */
  interface Measure {
    /** Finds nothing. */
    Measure NEVER = (stroke, grip) -> 0;

    long amount(Stroke stroke, Grip grip);
  }

  /** The same kind of rule, which charges in proportion to the pace. */
  record Paced(String id, String name, String explanation, String unit, Measure measure)
      implements PacedNoteRule {
    @Override
    public long share(Stroke stroke, Grip grip) {
      return measure.amount(stroke, grip);
    }
  }

  @Override
  public boolean idle() {
    return measure == Measure.NEVER;
  }

  @Override
  public long amount(Stroke stroke, Grip grip) {
    return measure.amount(stroke, grip);
  }
}
