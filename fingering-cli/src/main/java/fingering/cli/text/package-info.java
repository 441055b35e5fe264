/**
 * Plans, comparisons and checks as text.
 *
 * <p>Depends on the library, {@link fingering.check}, {@link fingering.page}, the terminal and the
 * options. No method takes or returns null unless it says so.
 */
@NullMarked
package fingering.cli.text;

import org.jspecify.annotations.NullMarked;
