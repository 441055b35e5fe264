/**
 * How fast a plan can be played at ease: the least time that shifts, fingers and bow take, against
 * the time that the music leaves them. Times are microseconds. No method takes or returns null; all
 * values are immutable.
 */
package fingering.tempo;
