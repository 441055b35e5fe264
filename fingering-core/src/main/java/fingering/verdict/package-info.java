/**
 * The verdict of a teacher on compared plans: which one to take, what it saves and what it costs,
 * and where the plans differ; and the price of each demand on a plan.
 *
 * <p>Packages are null-marked: no method takes or returns null. All values are immutable and may be
 * shared by threads.
 */
@NullMarked
package fingering.verdict;

import org.jspecify.annotations.NullMarked;
