/** The rules of the check. Each finds one family of problems in a part. */
@NullMarked
package fingering.playability.rules;

import org.jspecify.annotations.NullMarked;
