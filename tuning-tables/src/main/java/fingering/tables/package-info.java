/**
 * Pitches, positions and keys, and facts about bowed instruments: strings, open pitches, lengths
 * and names. The facts are read from tables that name their sources.
 *
 * <p>Depends on no other package. No method takes or returns null unless annotated. All values are
 * immutable and safe for use by many threads.
 */
@NullMarked
package fingering.tables;

import org.jspecify.annotations.NullMarked;
