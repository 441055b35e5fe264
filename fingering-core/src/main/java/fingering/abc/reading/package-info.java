/**
 * Reads the header and the body of a tune into measures: accidentals, ties, slurs, tuplets, broken
 * rhythm, and the numbers of measures.
 *
 * <p>Depends on {@link fingering.abc.syntax}. A {@link fingering.abc.reading.Tune} is immutable; a
 * tune is read by one thread.
 */
@NullMarked
package fingering.abc.reading;

import org.jspecify.annotations.NullMarked;
