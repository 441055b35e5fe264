/**
 * Music on pages: its lines with the fingers of plans, rings around signs, and the music in words.
 *
 * <p>Depends on the library, {@link fingering.page.view}, {@link fingering.page.live} and the
 * classes that the build makes from the templates. No method takes or returns null.
 */
@NullMarked
package fingering.page.music;

import org.jspecify.annotations.NullMarked;
