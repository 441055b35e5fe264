/** Where things stand from left to right: columns, measures, systems. */
@NullMarked
package fingering.engraving.spacing;

import org.jspecify.annotations.NullMarked;
