/** The notes of a part sorted for drawing: columns, chords, beams, tuplets, accidentals. */
@NullMarked
package fingering.engraving.notes;

import org.jspecify.annotations.NullMarked;
