package fingering.scoring;

import fingering.fingerboard.Grip;

/** A rule that judges a single grip. */
public non-sealed interface NoteRule extends CostRule {
  @Override
  default int lookBack() {
    return 0;
  }

  /** The amount charged for a grip, in the rule's unit, 0 or more. */
  long amount(NoteContext context, Grip grip);
}
