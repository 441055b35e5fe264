/**
 * Plans: what a player is to do, note by note, with its cost explained, and plans held side by
 * side. No method takes or returns null; all values are immutable.
 */
package fingering.plan;
