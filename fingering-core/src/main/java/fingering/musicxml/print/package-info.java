/** What is printed on the staff of a part: notes, signs, words and dynamics. */
@NullMarked
package fingering.musicxml.print;

import org.jspecify.annotations.NullMarked;
