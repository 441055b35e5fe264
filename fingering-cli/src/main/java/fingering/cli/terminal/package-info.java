/**
 * Text on a terminal: character sets, colours, columns, dates and a progress bar.
 *
 * <p>Depends on no other package of the command line. Only the progress bar may be used by several
 * threads.
 */
@NullMarked
package fingering.cli.terminal;

import org.jspecify.annotations.NullMarked;
