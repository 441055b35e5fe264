/**
 * The content of a part in order of time. It counts time from divisions, backups and forwards, and
 * decides for how long words, signs and accidentals apply.
 *
 * <p>Depends on {@link fingering.musicxml.element} and {@link fingering.musicxml.words}. A {@link
 * fingering.musicxml.timeline.PartTimeline} is immutable and thread-safe; the collectors and the
 * clock belong to the thread that reads the part.
 */
@NullMarked
package fingering.musicxml.timeline;

import org.jspecify.annotations.NullMarked;
