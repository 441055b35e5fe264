/**
 * Scales and arpeggios to be practised: their notes, rightly spelled, their rhythm and bowing, the
 * score that holds them, and the plan of the lowest that can be planned.
 *
 * <p>It knows {@link fingering.plan} and the rooms below that, and {@link fingering.musicxml}, by
 * which a scale is written and read again like any score. No method takes or returns null unless it
 * says so. All values are immutable.
 */
@NullMarked
package fingering.exercise;

import org.jspecify.annotations.NullMarked;
