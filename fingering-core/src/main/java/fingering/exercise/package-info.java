/**
 * Scales and arpeggios to be practised: their notes, rightly spelled, their rhythm and bowing, the
 * score that holds them, and the plan of the lowest that can be planned. No method takes or returns
 * null; all values are immutable.
 */
package fingering.exercise;
