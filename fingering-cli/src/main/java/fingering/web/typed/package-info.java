/**
 * Texts that are typed on the local page: kept while the server runs, and saved in the teacher's
 * folder. No method takes or returns null.
 */
@NullMarked
package fingering.web.typed;

import org.jspecify.annotations.NullMarked;
