/**
 * The cost of a fingering and its explanation: rules, the weights that a teacher can read and
 * change, and the charges that add up to a total. All costs are exact whole points.
 *
 * <p>Uses {@link fingering.fingerboard} and the packages that it builds on; it does not know how
 * plans are searched. No method takes or returns null. All values are immutable and may be shared
 * by threads.
 */
@NullMarked
package fingering.scoring;

import org.jspecify.annotations.NullMarked;
