/**
 * Writes fingers, strings and words into the text of a score.
 *
 * <p>Depends on {@code fingering.musicxml.xml} and the addresses of notes in {@link
 * fingering.music}. {@link fingering.musicxml.marking.ScoreMarker} may be used by several threads
 * at once.
 */
@NullMarked
package fingering.musicxml.marking;

import org.jspecify.annotations.NullMarked;
