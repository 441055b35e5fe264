/**
 * Audition sheets: reading, planning and printing them.
 *
 * <p>Depends on the library, files, options, JSON and {@link fingering.cli.text}. No method takes
 * or returns null unless it says so.
 */
@NullMarked
package fingering.cli.audition;

import org.jspecify.annotations.NullMarked;
