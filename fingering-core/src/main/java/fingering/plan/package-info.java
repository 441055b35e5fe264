/**
 * Plans: a fingering for every note of a passage, with its cost by rule, and comparisons of plans.
 * Most callers start with {@link fingering.plan.PlanComparer}.
 *
 * <p>The package depends on {@link fingering.demand} and the packages below that, and on the marks
 * of {@link fingering.musicxml}. No method accepts or returns null unless it says so. All values
 * are immutable. Planners and comparers cache costs and are thread-safe; only the builder of a
 * brief is not.
 */
@NullMarked
package fingering.plan;

import org.jspecify.annotations.NullMarked;
