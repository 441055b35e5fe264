/** Draws a system: staff, notes, beams, curves, fingers, words. */
@NullMarked
package fingering.engraving.drawing;

import org.jspecify.annotations.NullMarked;
