/**
 * Help, manual pages and error messages, made from the declarations of the commands.
 *
 * <p>Depends on the packages of the command line except {@code fingering.cli.command}, which uses
 * it. For one thread.
 */
@NullMarked
package fingering.cli.help;

import org.jspecify.annotations.NullMarked;
