/**
 * The marks of a plan that are written into a score: fingers, strings and positions, all of them or
 * only those that a player needs.
 *
 * <p>No method takes or returns null. All values are immutable.
 */
@NullMarked
package fingering.plan.marks;

import org.jspecify.annotations.NullMarked;
