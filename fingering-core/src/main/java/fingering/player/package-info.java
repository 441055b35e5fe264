/**
 * Players and the skills they have learned: positions, finger patterns, extensions and kinds of
 * shift.
 *
 * <p>Uses {@link fingering.scoring} and the packages that it builds on. No method takes or returns
 * null. All values are immutable and may be shared by threads.
 */
@NullMarked
package fingering.player;

import org.jspecify.annotations.NullMarked;
