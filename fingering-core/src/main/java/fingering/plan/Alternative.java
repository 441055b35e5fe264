package fingering.plan;

import com.google.common.collect.ImmutableList;

/**
 * A way to take the notes of one moment, with the best plan that takes them so.
 *
 * @param moment index of the moment in the passage, from 0
 * @param plan the best plan with these strings, fingers and positions at that moment
 */
public record Alternative(int moment, Plan plan) {
  /** How the notes that begin at the moment are taken, lowest first. */
  public ImmutableList<PlannedNote> notes() {
    return plan.notes().stream()
        .filter(note -> note.moment() == moment)
        .collect(ImmutableList.toImmutableList());
  }
}
