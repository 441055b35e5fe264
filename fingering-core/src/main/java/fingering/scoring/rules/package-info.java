/** The cost rules of the library, one class for each family, and the rules for a known player. */
@NullMarked
package fingering.scoring.rules;

import org.jspecify.annotations.NullMarked;
