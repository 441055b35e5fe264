/** Writes simple music as a new score. */
@NullMarked
package fingering.musicxml.writing;

import org.jspecify.annotations.NullMarked;
