/**
 * What is prepared for an audition: a set of pieces that together have to show some skills, planned
 * so that they do at the least cost.
 *
 * <p>It knows {@link fingering.plan} and {@link fingering.demand}; not where the pieces came from.
 * No method takes or returns null unless it says so. All values that are handed out are immutable;
 * an audition is planned in one thread.
 */
@NullMarked
package fingering.audition;

import org.jspecify.annotations.NullMarked;
