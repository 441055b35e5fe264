/**
 * The arranger's check: what cannot, or should not, be asked of the string parts of a score for
 * players of a level. Times are seconds, or microseconds where so named.
 *
 * <p>It knows {@link fingering.plan}, {@link fingering.tempo} and {@link fingering.musicxml}, and
 * the rooms below them. No method takes or returns null unless it says so. All values are
 * immutable; only a {@link fingering.playability.check.Checker} keeps anything, and serves many
 * threads.
 */
@NullMarked
package fingering.playability;

import org.jspecify.annotations.NullMarked;
