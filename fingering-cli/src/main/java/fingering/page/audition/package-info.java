/**
 * Scales and audition sheets on the local page: what is typed, and what is shown.
 *
 * <p>Depends on the library, {@link fingering.sheet}, {@link fingering.page} and the packages that
 * it uses. No method takes or returns null.
 */
@NullMarked
package fingering.page.audition;

import org.jspecify.annotations.NullMarked;
