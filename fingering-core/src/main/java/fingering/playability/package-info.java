/**
 * The arranger's check: finds what is unplayable or risky in the string parts of a score, for
 * players at a level. Times are in seconds, or in microseconds if the name says so.
 *
 * <p>The package depends on {@link fingering.plan}, {@link fingering.tempo}, {@link
 * fingering.musicxml} and what these depend on. Unless a method says otherwise, it neither takes
 * nor returns null. All values are immutable. A {@link fingering.playability.check.Checker} caches
 * grips and costs, and is thread-safe.
 */
@NullMarked
package fingering.playability;

import org.jspecify.annotations.NullMarked;
