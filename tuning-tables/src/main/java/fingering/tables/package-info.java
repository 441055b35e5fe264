/**
 * Pitches, positions and keys, and the facts about bowed instruments: strings, open pitches,
 * lengths and names, each read from a table that names its source.
 *
 * <p>It knows nothing of the other rooms. No method takes or returns null unless it says so. All
 * values are immutable; tables are read once, and any number of threads may ask.
 */
@NullMarked
package fingering.tables;

import org.jspecify.annotations.NullMarked;
