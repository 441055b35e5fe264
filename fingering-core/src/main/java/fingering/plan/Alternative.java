package fingering.plan;

import com.google.common.collect.ImmutableList;

/**
 * A fingering of the notes of one moment, with the cheapest plan that uses it.
 *
 * @param moment index of the moment in the passage, from 0
 * @param plan the cheapest plan with these strings, fingers and positions at that moment
 */
public record Alternative(int moment, Plan plan) {
  /** The planned notes that begin at the moment, lowest first. */
  public ImmutableList<PlannedNote> notes() {
    return plan.notes().stream()
        .filter(note -> note.moment() == moment)
        .collect(ImmutableList.toImmutableList());
  }
}
