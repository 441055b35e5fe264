/** Text on a terminal: character sets, colours, columns, and a progress bar. */
@NullMarked
package fingering.cli.terminal;

import org.jspecify.annotations.NullMarked;
