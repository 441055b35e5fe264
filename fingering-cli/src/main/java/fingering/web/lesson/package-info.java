/**
 * The lessons that are open on the local page: their state, what changes them, and how they are
 * saved. Nothing here knows of HTTP. No method takes or returns null.
 */
@NullMarked
package fingering.web.lesson;

import org.jspecify.annotations.NullMarked;
