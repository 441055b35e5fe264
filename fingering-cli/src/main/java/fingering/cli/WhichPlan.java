package fingering.cli;

import fingering.plan.Brief;
import fingering.plan.Comparer;
import fingering.plan.Plan;
import java.util.Optional;
import java.util.function.Supplier;

/** Which of the plans to take. */
enum WhichPlan {
  FREE,
  FIRST,
  THIRD,
  SECOND;

  /**
   * That plan.
   *
   * @param free what a plan of free choice has to meet
   * @throws IllegalArgumentException if there is none
   */
  Plan plan(Comparer comparer, Supplier<Brief> free) {
    return switch (this) {
      case FIRST -> comparer.first();
      case THIRD -> chosen(comparer.upperPlan(), comparer);
      case SECOND -> chosen(comparer.firstSecondThird(), comparer);
      case FREE -> comparer.plan(free.get());
    };
  }

  private static Plan chosen(Optional<Plan> plan, Comparer comparer) {
    return plan.orElseThrow(
        () ->
            new IllegalArgumentException(
                "No fingering of this passage shows what that plan must show (a stay in "
                    + comparer.upper().display()
                    + " position, or 1st to 3rd); choose first or free."));
  }
}
