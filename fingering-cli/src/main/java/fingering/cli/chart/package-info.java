/** Charts of the fingerboard as text and as pictures. */
@NullMarked
package fingering.cli.chart;

import org.jspecify.annotations.NullMarked;
