/**
 * What is to be played: a passage of measures and moments, with what is printed at them. Time is
 * exact in quarter notes and, at the tempo asked for, in microseconds.
 *
 * <p>It knows {@link fingering.tables} only: whatever file music came from, it looks alike here. No
 * method takes or returns null unless it says so. All values are immutable and may be shared by
 * threads.
 */
@NullMarked
package fingering.music;

import org.jspecify.annotations.NullMarked;
