/**
 * Scales and arpeggios to practise: their notes and spelling, rhythm, bowing, score and plan.
 *
 * <p>The package depends on {@link fingering.plan} and the packages below that, and on {@link
 * fingering.musicxml}, with which it writes a scale and reads it back like any score. No method
 * accepts or returns null unless it says so. All values are immutable.
 */
@NullMarked
package fingering.exercise;

import org.jspecify.annotations.NullMarked;
