/**
 * What is printed on the staff of a part, for programs that draw it: notes with their signs, clefs,
 * signatures, bar lines, slurs, tuplets, words, dynamics and hairpins. Times are exact in quarter
 * notes.
 *
 * <p>Depends on {@link fingering.music} and {@link fingering.tables}, and on no file format. No
 * method takes or returns null. All values are immutable and safe for use by many threads. Notes
 * that the score hides are left out, with the slurs that begin or end at them.
 */
@NullMarked
package fingering.music.print;

import org.jspecify.annotations.NullMarked;
