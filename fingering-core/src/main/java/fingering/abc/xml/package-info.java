/** Writes a tune that has been read as MusicXML. */
@NullMarked
package fingering.abc.xml;

import org.jspecify.annotations.NullMarked;
