/**
 * Reads tunes in ABC notation and converts them to MusicXML, so that they can be used like any
 * score (ABC standard 2.1, from memory). A {@link fingering.abc.Tunebook} contains tunes; a {@link
 * fingering.abc.TuneScore} is one of them as a score.
 *
 * <p>Depends only on {@link fingering.tables}. Immutable and thread-safe.
 */
@NullMarked
package fingering.abc;

import org.jspecify.annotations.NullMarked;
