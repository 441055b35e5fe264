package fingering.scoring.rules;

import fingering.fingerboard.Grip;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;

/** A note rule built from its description and a function that measures its amount. */
record NamedNoteRule(String id, String name, String explanation, String unit, Measure measure)
    implements NoteRule {
  /** Measures the amount for a grip. */
  interface Measure {
    /** Always 0. */
    Measure NEVER = (context, grip) -> 0;

    long amount(NoteContext context, Grip grip);
  }

  @Override
  public boolean idle() {
    return measure == Measure.NEVER;
  }

  @Override
  public long amount(NoteContext context, Grip grip) {
    return measure.amount(context, grip);
  }
}
