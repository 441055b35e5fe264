/**
 * Writes new scores: simple music, such as scales and exercises, and one part of a score or some
 * measures of it.
 *
 * <p>Depends on {@link fingering.music} {@code fingering.musicxml.words} and {@code
 * fingering.musicxml.xml}. Immutable; {@link fingering.musicxml.writing.PlainScoreWriter} and
 * {@link fingering.musicxml.writing.ScoreExcerpt} may be used by several threads at once.
 */
@NullMarked
package fingering.musicxml.writing;

import org.jspecify.annotations.NullMarked;
