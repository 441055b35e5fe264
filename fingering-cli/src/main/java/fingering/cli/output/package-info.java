/**
 * The forms of output of each command, and the file or terminal that they go to.
 *
 * <p>Depends on {@code fingering.cli.option}, {@code fingering.cli.file} and {@code
 * fingering.cli.terminal}. picocli sets the fields before a command runs; one thread uses them.
 */
@NullMarked
package fingering.cli.output;

import org.jspecify.annotations.NullMarked;
