/**
 * Charts of the fingerboard as text and as pictures.
 *
 * <p>Depends on the library, {@link fingering.svg}, the terminal and {@link fingering.cli.text}. No
 * method takes or returns null unless it says so.
 */
@NullMarked
package fingering.cli.chart;

import org.jspecify.annotations.NullMarked;
