package fingering.musicxml.file;

import fingering.musicxml.UnwritableScoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Predicate;

/**
 * A score that is completely written to a temporary file in its target's folder. {@link
 * #moveIntoPlace} makes it appear under its own name; {@link #close} deletes it if that was not
 * called. Not thread-safe.
 */
public final class StagedScore implements AutoCloseable {
  private final ScoreFile file;
  private final Path target;
  private final Path temporary;
  private final Predicate<Path> replaceable;
  private boolean open = true;

  StagedScore(ScoreFile file, Path target, Path temporary, Predicate<Path> replaceable) {
    this.file = file;
    this.target = target;
    this.temporary = temporary;
    this.replaceable = replaceable;
  }

  /**
   * Moves the file to its target.
   *
   * @throws UnwritableScoreException if the target exists by now, or the file cannot be moved there
   * @throws IllegalStateException if the file was moved or closed before
   */
  public void moveIntoPlace() {
    if (!open) {
      throw new IllegalStateException(target + " was moved into place or closed before");
    }
    file.move(temporary, target, replaceable);
    open = false;
  }

  /**
   * Deletes the temporary file if it was not moved into place.
   *
   * @throws UnwritableScoreException if it cannot be deleted
   */
  @Override
  public void close() {
    open = false;
    try {
      Files.deleteIfExists(temporary);
    } catch (IOException e) {
      throw ScoreFile.unwritable(target, e);
    }
  }
}
