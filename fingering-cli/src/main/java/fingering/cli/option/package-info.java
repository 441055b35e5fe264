/**
 * Options that several commands share, and the values that commands get from them: a score, a
 * passage, an instrument, demands, a place to print.
 *
 * <p>Depends on the library and on {@code fingering.cli.student}, {@code fingering.cli.file} and
 * {@code fingering.cli.terminal}. picocli sets the fields before a command runs; one thread uses
 * them.
 */
@NullMarked
package fingering.cli.option;

import org.jspecify.annotations.NullMarked;
