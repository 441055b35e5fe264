/**
 * Score files on disk: plain or compressed MusicXML, the limits on their size, and safe writing.
 */
@NullMarked
package fingering.musicxml.file;

import org.jspecify.annotations.NullMarked;
