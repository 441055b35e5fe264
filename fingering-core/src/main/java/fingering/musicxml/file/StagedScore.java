package fingering.musicxml.file;

import fingering.musicxml.UnwritableScoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A changed score that is written, and lies beside its place under another name until it
 * {@linkplain #appear appears}. Not safe for use by many threads.
 */
public final class StagedScore implements AutoCloseable {
  private final ScoreFile file;
  private final Path target;
  private final Path unfinished;

  StagedScore(ScoreFile file, Path target, Path unfinished) {
    this.file = file;
    this.target = target;
    this.unfinished = unfinished;
  }

  /**
   * Makes it appear in its place.
   *
   * @throws UnwritableScoreException if something is there by now, or it cannot be moved there
   */
  public void appear() {
    file.move(unfinished, target);
  }

  /** Takes away what has not appeared. */
  @Override
  public void close() {
    try {
      Files.deleteIfExists(unfinished);
    } catch (IOException e) {
      throw ScoreFile.unwritable(target, e);
    }
  }
}
