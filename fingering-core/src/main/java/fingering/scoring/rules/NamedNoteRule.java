package fingering.scoring.rules;

import fingering.fingerboard.Grip;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.PacedNoteRule;

/** A note rule made of its description and a measure. */
record NamedNoteRule(String id, String name, String explanation, String unit, Measure measure)
    implements NoteRule {
  /** Measures how much of something a grip has. */
  interface Measure {
    /** Finds nothing. */
    Measure NEVER = (context, grip) -> 0;

    long amount(NoteContext context, Grip grip);
  }

  /** The same kind of rule, which charges in proportion to the pace. */
  record Paced(String id, String name, String explanation, String unit, Measure measure)
      implements PacedNoteRule {
    @Override
    public long share(NoteContext context, Grip grip) {
      return measure.amount(context, grip);
    }
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
