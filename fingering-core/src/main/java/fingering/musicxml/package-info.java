/**
 * Reads scores in MusicXML and writes marks back into them, and simple music as new scores. A
 * {@link fingering.musicxml.file.ScoreFile} is read into a {@link
 * fingering.musicxml.reading.Score}, whose parts become passages of {@link fingering.music}.
 *
 * <p>It knows {@link fingering.music} and {@link fingering.tables}. The types of the XML binding
 * stay inside: no other room sees them. No method takes or returns null unless it says so. A file
 * and a score that have been read are immutable and may be shared by threads, and several threads
 * may read and write at once; files are never written over.
 */
@NullMarked
package fingering.musicxml;

import org.jspecify.annotations.NullMarked;
