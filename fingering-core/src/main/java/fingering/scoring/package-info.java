/**
 * What a fingering costs and why: small named rules, the weights a teacher can read and change, and
 * the charges that explain a total; and what a player has learned, since the rest is dear. All
 * costs are exact whole points.
 *
 * <p>It knows {@link fingering.fingerboard} and the rooms below that; nothing of how a way is
 * sought. No method takes or returns null unless it says so. All values are immutable and may be
 * shared by threads.
 */
@NullMarked
package fingering.scoring;

import org.jspecify.annotations.NullMarked;
