/**
 * How a second start of the program finds the server that is already running, and has it open
 * another page. No method takes or returns null.
 */
@NullMarked
package fingering.web.running;

import org.jspecify.annotations.NullMarked;
