/**
 * Pitches and positions, and the facts about bowed instruments: strings, open pitches, lengths and
 * names, each read from a table that names its source. No method takes or returns null.
 */
package fingering.tables;
