/**
 * Auditions: several pieces that together have to show some skills, planned at the least total
 * cost.
 *
 * <p>The package depends on {@link fingering.plan} and {@link fingering.demand}. No method accepts
 * or returns null unless it says so. Public values are immutable; an audition is planned in one
 * thread.
 */
@NullMarked
package fingering.audition;

import org.jspecify.annotations.NullMarked;
