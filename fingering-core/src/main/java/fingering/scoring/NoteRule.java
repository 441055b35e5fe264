package fingering.scoring;

import fingering.fingerboard.Grip;

/** A rule that judges a grip by itself. */
public interface NoteRule extends CostRule {
  @Override
  default int lookBack() {
    return 0;
  }

  /** How much of what the rule charges this grip has, in the rule's unit; 0 or more. */
  long amount(NoteContext context, Grip grip);
}
