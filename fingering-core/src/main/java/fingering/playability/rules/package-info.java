/** The rules of the check: each finds one family of problems in a part. */
@NullMarked
package fingering.playability.rules;

import org.jspecify.annotations.NullMarked;
