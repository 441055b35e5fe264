/** Reads a score into parts and passages. */
@NullMarked
package fingering.musicxml.reading;

import org.jspecify.annotations.NullMarked;
