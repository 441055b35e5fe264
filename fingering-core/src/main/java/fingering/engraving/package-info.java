/** Engraves parts: lines of music of a given width, with the fingers of plans at the notes. */
@NullMarked
package fingering.engraving;

import org.jspecify.annotations.NullMarked;
