/**
 * The entry point of the program. The packages below it hold the commands, their options, and what
 * they print.
 *
 * <p>Depends on all other packages; no package depends on it. Only {@link fingering.cli.Main}
 * prints to the standard streams and ends the program.
 */
@NullMarked
package fingering.cli;

import org.jspecify.annotations.NullMarked;
