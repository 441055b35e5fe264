/** Elements of ABC notation, and the cursor that reads them from a line. */
@NullMarked
package fingering.abc.syntax;

import org.jspecify.annotations.NullMarked;
