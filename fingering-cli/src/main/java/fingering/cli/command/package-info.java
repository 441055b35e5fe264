/**
 * The commands, one class each, and the exit codes.
 *
 * <p>Depends on all other packages except {@code fingering.cli}. Each command runs once, in one
 * thread; only {@code check} starts threads of its own.
 */
@NullMarked
package fingering.cli.command;

import org.jspecify.annotations.NullMarked;
