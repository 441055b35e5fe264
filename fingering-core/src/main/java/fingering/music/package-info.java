/**
 * The music to play: a passage of measures and moments, and the marks printed in it. Times are
 * exact in quarter notes; at a tempo, they are rounded to microseconds.
 *
 * <p>Depends on {@link fingering.tables} only, and on no file format. No method takes or returns
 * null unless annotated. All values are immutable and safe for use by many threads.
 */
@NullMarked
package fingering.music;

import org.jspecify.annotations.NullMarked;
