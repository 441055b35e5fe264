/**
 * Practice of a plan until the performance: the tempo ladder, the journal of clean tempi, practice
 * spots with their exercises, and what to circle in the part.
 *
 * <p>The package depends on {@link fingering.plan}, {@link fingering.tempo}, {@link
 * fingering.exercise} and what these depend on. Nothing here reads the clock; callers pass dates.
 * Unless a method says otherwise, it neither takes nor returns null. All values are immutable and
 * thread-safe. Journal files are locked against other threads and programs while they are read or
 * written.
 */
@NullMarked
package fingering.practice;

import org.jspecify.annotations.NullMarked;
