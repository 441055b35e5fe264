/**
 * Elements of ABC notation, read one at a time from a line: fields, meters, keys, clefs, tempi,
 * note values, tuplet specifiers, bar lines and decorations.
 *
 * <p>Depends on {@link fingering.tables}. Immutable, except for {@link
 * fingering.abc.syntax.LineCursor}, which one thread must use.
 */
@NullMarked
package fingering.abc.syntax;

import org.jspecify.annotations.NullMarked;
