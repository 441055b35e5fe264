/** What is drawn: a canvas that knows the box of everything on it. */
@NullMarked
package fingering.engraving.ink;

import org.jspecify.annotations.NullMarked;
