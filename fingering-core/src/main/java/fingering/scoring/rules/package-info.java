/**
 * The cost rules of the library, one class for each family, and the rules on what a player has not
 * learned.
 *
 * <p>Uses {@link fingering.player} and the packages that it builds on. No method takes or returns
 * null. All values are immutable and may be shared by threads.
 */
@NullMarked
package fingering.scoring.rules;

import org.jspecify.annotations.NullMarked;
