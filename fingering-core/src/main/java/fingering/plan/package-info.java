/**
 * Plans: what a player is to do, note by note, with its cost explained, and plans held side by
 * side. {@link fingering.plan.PlanComparer} is where most callers begin.
 *
 * <p>It knows {@link fingering.demand} and the rooms below that, and of {@link fingering.musicxml}
 * the marks alone. No method takes or returns null unless it says so. All values are immutable;
 * planners and comparers remember what they reckoned, and serve many threads. Only the builder of a
 * brief is for one.
 */
@NullMarked
package fingering.plan;

import org.jspecify.annotations.NullMarked;
