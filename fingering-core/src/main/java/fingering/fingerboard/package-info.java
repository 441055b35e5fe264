/**
 * Where a pitch can be stopped and by what hand: fingers, hand frames, reach, and the grips of one
 * or more strings. No method takes or returns null; all values are immutable.
 */
package fingering.fingerboard;
