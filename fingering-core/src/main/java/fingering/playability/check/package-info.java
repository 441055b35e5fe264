/** Runs the check of a score, rule by rule. */
@NullMarked
package fingering.playability.check;

import org.jspecify.annotations.NullMarked;
