/** Writes fingers, strings and words into the text of a score. */
@NullMarked
package fingering.musicxml.marking;

import org.jspecify.annotations.NullMarked;
