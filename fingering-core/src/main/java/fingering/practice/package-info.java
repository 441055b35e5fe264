/**
 * What to do with a plan until the day it is played: the tempo ladder, the journal that tells what
 * was clean, practice spots with their exercises, what to circle in the part.
 *
 * <p>It knows {@link fingering.plan}, {@link fingering.tempo} and {@link fingering.exercise}, and
 * the rooms below them. Nothing here asks for the date: it is told. No method takes or returns null
 * unless it says so. All values are immutable; a journal file is locked while it is written,
 * against other programs too.
 */
@NullMarked
package fingering.practice;

import org.jspecify.annotations.NullMarked;
