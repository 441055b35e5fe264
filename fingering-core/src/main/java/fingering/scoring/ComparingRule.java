package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Grip;

/** A rule that judges each grip of a moment by comparing it with the others. */
public non-sealed interface ComparingRule extends CostRule {
  @Override
  default int lookBack() {
    return 0;
  }

  /** The amount charged for each grip, in the rule's unit, 0 or more. */
  ImmutableLongArray amounts(NoteContext context, ImmutableList<Grip> grips);
}
