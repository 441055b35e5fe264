/**
 * The local page: a server on this computer only, the rules that keep others out, and the scores
 * that are open in it.
 *
 * <p>Depends on the library and {@link fingering.page}, but not on options: whoever starts the
 * server says how plans are made. No method takes or returns null unless it says so.
 */
@NullMarked
package fingering.web;

import org.jspecify.annotations.NullMarked;
