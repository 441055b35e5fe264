/**
 * How fast a plan can be played at ease: the least time that shifts, fingers and bow take, against
 * the time that the music leaves them. Times are microseconds.
 *
 * <p>It knows {@link fingering.plan} and the rooms below that. No method takes or returns null
 * unless it says so. All values are immutable.
 */
@NullMarked
package fingering.tempo;

import org.jspecify.annotations.NullMarked;
