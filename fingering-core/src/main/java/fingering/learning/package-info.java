/**
 * Learns the weights of the rules from fingered scores: the weights with the least expected
 * difference between plans and printed fingerings.
 *
 * <p>The package depends on {@link fingering.plan}, {@link fingering.scoring} and the packages
 * below them. No method accepts or returns null unless it says so. Learned weights are the same to
 * the last bit for any number of threads.
 */
@NullMarked
package fingering.learning;

import org.jspecify.annotations.NullMarked;
