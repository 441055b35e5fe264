/**
 * Writes a tune as MusicXML.
 *
 * <p>Depends on {@link fingering.abc.reading} and {@link fingering.abc.syntax}. May be used by
 * several threads at once.
 */
@NullMarked
package fingering.abc.xml;

import org.jspecify.annotations.NullMarked;
