/**
 * Exact search over the grips of a passage by dynamic programming: the best way, the best that
 * differ, and the best that show what is required.
 *
 * <p>It knows {@link fingering.scoring} and the rooms below that; what a requirement means to a
 * teacher it does not know. No method takes or returns null unless it says so. {@link
 * fingering.search.CostCache} remembers what it reckoned, and serves many threads; a search runs in
 * the thread that asks.
 */
@NullMarked
package fingering.search;

import org.jspecify.annotations.NullMarked;
