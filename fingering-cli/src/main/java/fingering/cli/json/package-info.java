/**
 * Plans, comparisons and explanations as JSON.
 *
 * <p>Depends on the library and on {@code fingering.cli.text}, {@code fingering.cli.student} and
 * {@code fingering.cli.file}. The methods keep no state and may be called from any thread.
 */
@NullMarked
package fingering.cli.json;

import org.jspecify.annotations.NullMarked;
