/**
 * Reads the files that users write: weights, players, levels, briefs, audition sheets and tunings.
 * They are YAML; JSON is accepted because it is YAML. Of YAML, only keys with values and lists are
 * used: anchors, aliases, tags and several documents are refused.
 *
 * <p>{@link fingering.userfile.UserFields} reads the values of keys. A file that cannot be read is
 * refused in one sentence with file, line and advice.
 *
 * <p>Depends on {@link fingering.tables} only. No method takes or returns null unless it says so.
 * All values are immutable.
 */
@NullMarked
package fingering.userfile;

import org.jspecify.annotations.NullMarked;
