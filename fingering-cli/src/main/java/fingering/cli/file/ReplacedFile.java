package fingering.cli.file;

import fingering.musicxml.file.ScoreFile;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** A file that is replaced, with a copy of it until all files of the command have appeared. */
final class ReplacedFile {
  private final Path name;
  private Optional<Path> copy = Optional.empty();

  ReplacedFile(Path name) {
    this.name = name;
  }

  /** Copies the file, if there is one. It stays in its place until the new one replaces it. */
  void keep() {
    Path target = name.toAbsolutePath();
    if (!Files.exists(target)) {
      return;
    }
    Path part = ScoreFile.temporarySibling(target);
    copy = Optional.of(part);
    try {
      Files.copy(target, part);
    } catch (IOException e) {
      throw OutputPaths.unwritable(name, e);
    }
  }

  /** Puts the old file back, or deletes the new one if there was none. */
  void restore() {
    try {
      if (copy.isPresent()) {
        moveOver(copy.get(), name.toAbsolutePath());
      } else {
        Files.deleteIfExists(name.toAbsolutePath());
      }
    } catch (IOException e) {
      throw OutputPaths.unwritable(name, e);
    }
  }

  /** Deletes the copy. */
  void forget() {
    try {
      if (copy.isPresent()) {
        Files.deleteIfExists(copy.get());
      }
    } catch (IOException e) {
      throw OutputPaths.unwritable(name, e);
    }
  }

  /** Moves a file over another one, in one step where the disk can. */
  static void moveOver(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
