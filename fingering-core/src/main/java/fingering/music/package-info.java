/**
 * What is to be played: a passage of measures and moments, immutable. Time is exact in quarter
 * notes and, at the tempo asked for, in microseconds. No method takes or returns null.
 */
package fingering.music;
