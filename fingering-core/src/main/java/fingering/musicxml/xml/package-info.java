/** XML as text: a cursor over its elements, encodings, and characters. */
@NullMarked
package fingering.musicxml.xml;

import org.jspecify.annotations.NullMarked;
