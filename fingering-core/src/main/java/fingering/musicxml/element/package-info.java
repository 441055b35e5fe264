/**
 * Elements of a score as the file has them: notes, times, meters, tempo marks, and the clock of a
 * part.
 */
@NullMarked
package fingering.musicxml.element;

import org.jspecify.annotations.NullMarked;
