/** What a player has learned: positions, finger patterns, extensions and kinds of shifts. */
@NullMarked
package fingering.player;

import org.jspecify.annotations.NullMarked;
