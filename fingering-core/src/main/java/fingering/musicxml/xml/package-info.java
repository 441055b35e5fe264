/**
 * XML as text: a cursor with the position of every element, safe parser settings, encodings, and
 * characters.
 *
 * <p>Depends on the exceptions in {@link fingering.musicxml}. Immutable, except for {@link
 * fingering.musicxml.xml.XmlCursor}, which one thread must use.
 */
@NullMarked
package fingering.musicxml.xml;

import org.jspecify.annotations.NullMarked;
