/**
 * Score files on disk: plain or compressed MusicXML, limits on their content, conversion from
 * score-timewise, line numbers of measures, and writing that overwrites nothing.
 *
 * <p>Depends on {@code fingering.musicxml.xml}. A {@link fingering.musicxml.file.ScoreFile} is
 * immutable and thread-safe; a {@link fingering.musicxml.file.StagedScore} and a {@link
 * fingering.musicxml.file.LimitedReader} belong to one thread.
 */
@NullMarked
package fingering.musicxml.file;

import org.jspecify.annotations.NullMarked;
