/**
 * Reads scores in MusicXML and writes marks back into them. A {@link fingering.musicxml.ScoreFile}
 * is read into a {@link fingering.musicxml.Score}, whose parts become passages of {@link
 * fingering.music}. The types of the XML binding stay inside this package. No method takes or
 * returns null.
 */
package fingering.musicxml;
