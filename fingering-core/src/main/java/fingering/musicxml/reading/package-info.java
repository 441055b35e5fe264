/**
 * Reads files into scores, and scores into passages. It detects instruments, finds parts and
 * measures that a user requests, joins ties and slurs, and determines sounding pitches, harmonics
 * and times.
 *
 * <p>Depends on all other subpackages for reading: file, element, words, timeline and print. A
 * {@link fingering.musicxml.reading.Score} is immutable and thread-safe, and {@link
 * fingering.musicxml.reading.ScoreReader} may be used by several threads at once.
 */
@NullMarked
package fingering.musicxml.reading;

import org.jspecify.annotations.NullMarked;
