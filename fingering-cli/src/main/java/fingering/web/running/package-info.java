/**
 * How a second start of the program finds the server that is already running, and what it asks of
 * it. No method takes or returns null.
 */
@NullMarked
package fingering.web.running;

import org.jspecify.annotations.NullMarked;
