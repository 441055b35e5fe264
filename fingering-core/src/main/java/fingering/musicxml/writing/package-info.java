/**
 * Writes simple music, such as scales and exercises, as a new score.
 *
 * <p>Depends on {@link fingering.music} and {@code fingering.musicxml.xml}. Immutable; {@link
 * fingering.musicxml.writing.PlainScoreWriter} may be used by several threads at once.
 */
@NullMarked
package fingering.musicxml.writing;

import org.jspecify.annotations.NullMarked;
