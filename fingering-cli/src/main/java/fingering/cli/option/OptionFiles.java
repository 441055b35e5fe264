package fingering.cli.option;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Files named by options that also accept other names. */
final class OptionFiles {
  private OptionFiles() {}

  /** The file of that name; empty if there is none. */
  static Optional<Path> existing(String name) {
    try {
      return Optional.of(Path.of(name)).filter(Files::exists);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
