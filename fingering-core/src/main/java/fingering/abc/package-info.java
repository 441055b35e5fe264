/**
 * Reads music typed in ABC notation, as far as a single line needs it, and puts it into MusicXML,
 * so that everything that is done with a score can be done with it (ABC standard 2.1, from memory).
 * A {@link fingering.abc.Tunebook} holds tunes; the {@link fingering.abc.TuneScore} of one is the
 * text of a score.
 *
 * <p>It knows {@link fingering.tables} only. No method takes or returns null unless it says so.
 * What it hands out is immutable.
 */
@NullMarked
package fingering.abc;

import org.jspecify.annotations.NullMarked;
