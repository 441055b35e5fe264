/**
 * Single elements of a part, read from the XML binding: notes with their ties, slurs and other
 * notations, harmonics, ornaments, time signatures, transpositions, and tempo marks.
 *
 * <p>Depends on {@link fingering.music} and {@link fingering.musicxml.words}. Immutable and
 * thread-safe.
 */
@NullMarked
package fingering.musicxml.element;

import org.jspecify.annotations.NullMarked;
