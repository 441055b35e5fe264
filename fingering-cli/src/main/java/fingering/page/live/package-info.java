/** What the templates of the local page show. No method takes or returns null. */
@NullMarked
package fingering.page.live;

import org.jspecify.annotations.NullMarked;
