/**
 * Practice ladders, spots and journals as text, calendar and picture.
 *
 * <p>Depends on the library, the terminal, files, {@link fingering.cli.text} and the elements of
 * pictures in {@link fingering.cli.chart}. No method takes or returns null unless it says so.
 */
@NullMarked
package fingering.cli.practice;

import org.jspecify.annotations.NullMarked;
