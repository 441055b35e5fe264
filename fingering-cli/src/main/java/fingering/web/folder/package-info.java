/** The students in a teacher's folder: listed, found and saved. No method takes or returns null. */
@NullMarked
package fingering.web.folder;

import org.jspecify.annotations.NullMarked;
