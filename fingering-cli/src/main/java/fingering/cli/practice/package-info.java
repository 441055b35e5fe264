/** Practice ladders, spots and journals as text, calendar and picture. */
@NullMarked
package fingering.cli.practice;

import org.jspecify.annotations.NullMarked;
