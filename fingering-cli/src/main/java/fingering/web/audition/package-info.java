/**
 * Audition sheets of the local page: their files, and who plans them and scales.
 *
 * <p>No method takes or returns null.
 */
@NullMarked
package fingering.web.audition;

import org.jspecify.annotations.NullMarked;
