package fingering.web.folder;

import fingering.files.FileNames;
import fingering.files.FileProblem;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Names for new files, typed by a teacher. */
public final class NewName {
  /** Names that are names of files on every system, and never lead to another folder. */
  private static final Pattern NAME =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N} '’-]|\\.(?=$| )){0,39}");

  private NewName() {}

  /**
   * The file of a name in a folder; empty if the name cannot be used.
   *
   * @param ending its ending, with the dot
   */
  public static Optional<Path> in(Path folder, String name, String ending) {
    if (!NAME.matcher(name).matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(folder.resolve(name + ending));
    } catch (InvalidPathException e) {
      throw new FingeringException(FileNames.fault(name), e);
    }
  }

  /** Whether there is a file of a name, in capital or small letters. */
  public static boolean taken(Path file) {
    Path folder = file.resolveSibling("");
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.anyMatch(
          other ->
              String.valueOf(other.getFileName())
                  .equalsIgnoreCase(String.valueOf(file.getFileName())));
    } catch (IOException e) {
      throw new FingeringException(FileProblem.reading(folder, e), e);
    }
  }
}
