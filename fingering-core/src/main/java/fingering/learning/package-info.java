/**
 * Learns the weights of the rules from fingered scores: the weights under which what players
 * printed is likeliest.
 *
 * <p>It knows {@link fingering.plan} and {@link fingering.scoring}, and the rooms below them; not
 * the files the examples came from. No method takes or returns null unless it says so. What is
 * learned is the same to the last bit, however many threads there are.
 */
@NullMarked
package fingering.learning;

import org.jspecify.annotations.NullMarked;
