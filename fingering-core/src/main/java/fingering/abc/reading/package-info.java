/** Reads the header and the music of a tune. */
@NullMarked
package fingering.abc.reading;

import org.jspecify.annotations.NullMarked;
