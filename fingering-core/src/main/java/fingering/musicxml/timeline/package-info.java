/**
 * Everything that a part holds, in order of time: notes, and the words and signs that apply to
 * them.
 */
@NullMarked
package fingering.musicxml.timeline;

import org.jspecify.annotations.NullMarked;
