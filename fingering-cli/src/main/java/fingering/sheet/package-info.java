/**
 * Audition sheets as files: read, changed and saved.
 *
 * <p>Depends on the library only. No method takes or returns null.
 */
@NullMarked
package fingering.sheet;

import org.jspecify.annotations.NullMarked;
