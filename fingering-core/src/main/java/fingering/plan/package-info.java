/**
 * Plans: a fingering for every note of a passage, with its cost by rule, and comparisons of plans.
 * Start with {@link fingering.plan.Planner} for plans of your own {@linkplain fingering.plan.Brief
 * briefs}, or with {@link fingering.plan.PlanComparer} to compare first position with third.
 *
 * <p>The package depends on {@link fingering.demand} and the packages below that, and on the marks
 * of {@link fingering.musicxml}. No method accepts or returns null unless it says so. All values
 * are immutable. Planners and comparers cache costs and are thread-safe; only the builder of a
 * brief is not.
 */
@NullMarked
package fingering.plan;

import org.jspecify.annotations.NullMarked;
