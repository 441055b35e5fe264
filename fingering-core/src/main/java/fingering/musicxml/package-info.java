/**
 * Reads scores in MusicXML, writes marks into them, and writes simple music as new scores. {@link
 * fingering.musicxml.file.ScoreFile} is a file, {@link fingering.musicxml.reading.ScoreReader}
 * reads it, {@link fingering.musicxml.reading.Score} has its parts and passages, and {@link
 * fingering.musicxml.marking.ScoreMarker} marks a copy. This package itself has only the exceptions
 * of its subpackages.
 *
 * <p>The subpackages depend on {@link fingering.music} and {@link fingering.tables}. Types of the
 * XML binding appear only in them. Files and scores that have been read are immutable and
 * thread-safe; no file is overwritten.
 */
@NullMarked
package fingering.musicxml;

import org.jspecify.annotations.NullMarked;
