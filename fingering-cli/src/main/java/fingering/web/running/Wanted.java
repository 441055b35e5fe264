package fingering.web.running;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What a start of the program wants to see.
 *
 * @param file a score or lesson; empty for the first page
 * @param demo whether to show the demo if no file is given and the folder has nothing to open
 */
public record Wanted(Optional<Path> file, boolean demo) {
  /** The first page. */
  public static final Wanted FIRST_PAGE = new Wanted(Optional.empty(), false);
}
