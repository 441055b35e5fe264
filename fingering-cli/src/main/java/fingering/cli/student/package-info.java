/**
 * The students that a plan is made for, read from their player files, and the scoring chosen for
 * them.
 *
 * <p>Depends on the library and on {@code fingering.cli.file}. All types are immutable and may be
 * shared between threads.
 */
@NullMarked
package fingering.cli.student;

import org.jspecify.annotations.NullMarked;
