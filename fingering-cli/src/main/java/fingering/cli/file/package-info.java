/**
 * Files that the user names: reads small text files, and writes new files all together or not at
 * all.
 *
 * <p>Depends on the library only. For one thread.
 */
@NullMarked
package fingering.cli.file;

import org.jspecify.annotations.NullMarked;
