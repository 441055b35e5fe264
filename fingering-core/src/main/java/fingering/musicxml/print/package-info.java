/**
 * What is printed on the staff of a part, for pages that draw it: notes, clefs, slurs, words,
 * dynamics, hairpins and endings.
 *
 * <p>Depends on {@link fingering.musicxml.element} and {@link fingering.musicxml.timeline}. The
 * collectors belong to the thread that reads the part.
 */
@NullMarked
package fingering.musicxml.print;

import org.jspecify.annotations.NullMarked;
