package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.search.RequiredStays;
import fingering.tables.Position;
import java.util.BitSet;

/**
 * Remarks on the columns of a comparison: where a plan is not what its name promises, and why.
 *
 * @param upper the position in which the upper plan stays
 */
record ColumnRemarks(Passage passage, Planner planner, Position upper) {
  /** The most notes that a remark names. */
  private static final int MAX_NAMED = 3;

  /** All remarks on a plan. */
  ImmutableList<String> of(Plan plan) {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    if (plan.brief().returning() && 2 * plan.notesInPreferred() < plan.stoppedNotes()) {
      remarks.add(
          "'"
              + plan.name()
              + "' is there for fewer than half of its stopped notes: this music does not lie in "
              + upper.display()
              + ".");
    }
    if (plan.brief().requirement() instanceof RequiredStays stays && isShort(stays)) {
      remarks.add(
          "'"
              + plan.name()
              + "' can stay for only "
              + stays.notes()
              + (stays.notes() == 1 ? " stopped note." : " stopped notes."));
    }
    return remarks.build();
  }

  private static boolean isShort(RequiredStays stays) {
    ImmutableList<Integer> lengths =
        stays.positions().size() == 1 ? PlanComparer.STAY_LENGTHS : PlanComparer.SHORT_STAY_LENGTHS;
    return stays.notes() < lengths.get(0);
  }

  /**
   * The remark on the notes for which a plan leaves its positions, and why; none if there are none.
   */
  ImmutableList<String> outside(Plan plan) {
    int outside = plan.notesOutside();
    if (outside == 0) {
      return ImmutableList.of();
    }
    return ImmutableList.of(
        "'"
            + plan.name()
            + (plan.brief().returning()
                ? "' leaves its position for "
                : "' leaves its positions for ")
            + outside
            + (outside == 1 ? " note" : " notes")
            + ", marked !"
            + reason(plan)
            + ".");
  }

  /** Names the notes that are out of reach, and says why others are outside too. */
  private String reason(Plan plan) {
    BitSet outOfReach = planner.outOfReach(plan.brief());
    if (outOfReach.isEmpty()) {
      return "";
    }
    int others =
        (int)
            plan.notes().stream()
                .filter(note -> note.outside() && !outOfReach.get(note.moment()))
                .count();
    return ": "
        + InfeasibilityDiagnosis.names(passage, outOfReach, MAX_NAMED)
        + (outOfReach.cardinality() == 1 ? " is" : " are")
        + " out of reach there"
        + (others == 0
            ? ""
            : plan.brief().returning()
                ? "; the hand comes back in a rest, or for three notes or more that take a second"
                : "; the hand stays away for the notes close to these");
  }
}
