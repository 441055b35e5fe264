/**
 * What a plan must show, keep or avoid: each demand said by itself, in words and as a test of grips
 * or of whole paths.
 *
 * <p>It knows {@link fingering.search} and the rooms below that; not the brief that puts demands
 * together. No method takes or returns null unless it says so. All values are immutable.
 */
@NullMarked
package fingering.demand;

import org.jspecify.annotations.NullMarked;
