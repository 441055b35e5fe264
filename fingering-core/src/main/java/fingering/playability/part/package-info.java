/**
 * A part prepared for the check: divided among its players, with every grip and the easiest plan.
 */
@NullMarked
package fingering.playability.part;

import org.jspecify.annotations.NullMarked;
