/**
 * The left hand on the fingerboard: fingers, hand frames, reach, the placements of a note, and the
 * grips of one or more notes. Lengths are in millimetres, places on a string in semitones above the
 * open string.
 *
 * <p>Depends on {@link fingering.music} and {@link fingering.tables}; costs are computed elsewhere.
 * No method takes or returns null unless annotated. All values are immutable; a {@link
 * fingering.fingerboard.GripFinder} has a cache. All classes are safe for use by many threads.
 */
@NullMarked
package fingering.fingerboard;

import org.jspecify.annotations.NullMarked;
