/**
 * Where a pitch can be stopped and by what hand: fingers, hand frames, reach, and the grips of one
 * or more strings. Lengths are millimetres, places on a string semitones above the open one.
 *
 * <p>It knows {@link fingering.music} and {@link fingering.tables}; not what a grip costs. No
 * method takes or returns null unless it says so. All values are immutable; a {@link
 * fingering.fingerboard.GripFinder} remembers what it found, and serves many threads.
 */
@NullMarked
package fingering.fingerboard;

import org.jspecify.annotations.NullMarked;
