/**
 * Passages built in code, measure by measure. A mistake fails at once.
 *
 * <p>No method takes or returns null.
 */
@NullMarked
package fingering.music.builder;

import org.jspecify.annotations.NullMarked;
