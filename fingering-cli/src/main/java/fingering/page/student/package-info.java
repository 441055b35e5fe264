/**
 * Students on the local page: the list, the form in which they are made and changed, and the plans
 * of several students side by side. No method takes or returns null.
 */
@NullMarked
package fingering.page.student;

import org.jspecify.annotations.NullMarked;
