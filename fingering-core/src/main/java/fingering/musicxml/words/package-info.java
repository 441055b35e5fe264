/**
 * The meaning of words over the staff: {@code sul G}, {@code 3rd pos.}, {@code pizz.} The words and
 * their sources are in tables, such as {@code strings.table} and {@code tempo-words.table}. How
 * long words hold is decided in {@code fingering.musicxml.timeline}.
 *
 * <p>Depends only on {@link fingering.tables} and {@link fingering.music}. Immutable and
 * thread-safe.
 */
@NullMarked
package fingering.musicxml.words;

import org.jspecify.annotations.NullMarked;
