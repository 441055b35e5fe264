/**
 * Exact search by dynamic programming over the grips of a passage: the best path, the best paths
 * that differ visibly, and the best path that satisfies a requirement.
 *
 * <p>Uses {@link fingering.scoring} and the packages that it builds on; it does not know what a
 * requirement means to a teacher. No method takes or returns null. {@link
 * fingering.search.CostCache} serves many threads; a search runs in the thread that calls it.
 */
@NullMarked
package fingering.search;

import org.jspecify.annotations.NullMarked;
