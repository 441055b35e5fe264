/**
 * What the program says about a lesson on the local page, in the words of the commands. No method
 * takes or returns null.
 */
@NullMarked
package fingering.cli.advice;

import org.jspecify.annotations.NullMarked;
