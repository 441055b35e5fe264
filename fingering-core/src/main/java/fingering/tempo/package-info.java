/**
 * The highest comfortable tempo of a plan: the minimum time that shifts, fingers and bow need,
 * compared with the time that the music gives them. Times are in microseconds.
 *
 * <p>The package depends on {@link fingering.plan} and the packages below that. No method accepts
 * or returns null unless it says so. All values are immutable.
 */
@NullMarked
package fingering.tempo;

import org.jspecify.annotations.NullMarked;
