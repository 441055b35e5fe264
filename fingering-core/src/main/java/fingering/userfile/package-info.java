/**
 * Reads and changes the files that users write: weights, players, levels, briefs, audition sheets
 * and tunings. They are YAML; JSON is accepted because it is YAML. Of YAML, only keys with values
 * and lists are used: anchors, aliases, tags and several documents are refused.
 *
 * <p>{@link fingering.userfile.UserFields} reads the values of keys. A file that cannot be read is
 * refused in one sentence with file, line and advice. {@link fingering.userfile.FileUpdate} changes
 * a text and keeps its remarks, and {@link fingering.userfile.UserFileStore} saves it.
 *
 * <p>Depends on {@code fingering.tables} and {@code fingering.files}. No method takes or returns
 * null unless it says so. All values are immutable.
 */
@NullMarked
package fingering.userfile;

import org.jspecify.annotations.NullMarked;
