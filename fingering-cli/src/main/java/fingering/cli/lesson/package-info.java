/** Lessons on the command line: the options that read and save them, and the plans in them. */
@NullMarked
package fingering.cli.lesson;

import org.jspecify.annotations.NullMarked;
