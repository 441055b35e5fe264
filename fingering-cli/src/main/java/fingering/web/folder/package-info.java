/**
 * A teacher's folder: what its files are, and the students in it. No method takes or returns null.
 */
@NullMarked
package fingering.web.folder;

import org.jspecify.annotations.NullMarked;
