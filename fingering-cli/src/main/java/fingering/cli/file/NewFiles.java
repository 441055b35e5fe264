package fingering.cli.file;

import com.google.common.collect.Lists;
import fingering.files.TextFiles;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.file.StagedScore;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The new files and folders that one command writes. Each is first written beside its target under
 * another name. When all are complete, all appear, or none does. A file that the program wrote
 * before is replaced, if nobody has changed it since; no other file is.
 */
public final class NewFiles implements AutoCloseable {
  /** A file or folder that has not appeared yet. */
  public interface Unfinished {
    /**
     * Moves it to its target.
     *
     * @throws fingering.musicxml.UnwritableScoreException if that fails
     */
    void appear();

    /** Deletes it after it has appeared. */
    void undo();

    /** Deletes it before it has appeared. */
    void discard();

    /** Deletes what was kept to undo it, after all files have appeared. */
    default void settle() {}
  }

  private final List<Unfinished> all = new ArrayList<>();

  /** The files and folders to report, as the user named them; not the files in these folders. */
  private final Set<Path> reported = new LinkedHashSet<>();

  private boolean published;

  /**
   * Adds a file or folder.
   *
   * @param name the name to report
   */
  public void add(Path name, Unfinished file) {
    if (name.getParent() == null || !reported.contains(name.getParent())) {
      reported.add(name);
    }
    all.add(file);
  }

  /** Names the new files on the error stream. */
  public void report(CommandSpec command) {
    reported.forEach(file -> WrittenFiles.report(command, file));
  }

  /**
   * Adds a changed text of a score. A file of that name is replaced only if it is a score that the
   * program wrote and nobody has changed since, and is not the score that was read.
   *
   * @param text the text to write, usually that of the score with marks
   */
  public void score(ScoreFile file, String text, Path target) {
    // A file that another program, or this command, has created since is not replaced.
    boolean there = Files.exists(target);
    StagedScore score =
        file.stage(OwnFiles.marked(text), target, path -> there && OwnFiles.isUnchangedScore(path));
    ReplacedFile replaced = new ReplacedFile(target);
    add(
        target,
        new Unfinished() {
          @Override
          public void appear() {
            replaced.keep();
            score.moveIntoPlace();
          }

          @Override
          public void undo() {
            replaced.restore();
          }

          @Override
          public void discard() {
            score.close();
            replaced.forget();
          }

          @Override
          public void settle() {
            replaced.forget();
          }
        });
  }

  /**
   * Writes a text file.
   *
   * @param option the option that names the file, for messages
   */
  public void text(String text, Path file, String option) {
    bytes(OwnFiles.marked(text).getBytes(StandardCharsets.UTF_8), file, option);
  }

  /**
   * Writes a file.
   *
   * @param option the option that names the file, for messages
   */
  public void bytes(byte[] content, Path file, String option) {
    Path target = file.toAbsolutePath();
    Path part = ScoreFile.temporarySibling(target);
    ReplacedFile replaced = new ReplacedFile(file);
    boolean there = Files.exists(target);
    add(
        file,
        new Unfinished() {
          @Override
          public void appear() {
            try {
              if (there && OwnFiles.isUnchangedPage(target)) {
                replaced.keep();
                ReplacedFile.moveOver(part, target);
              } else {
                Files.move(part, target);
              }
            } catch (FileAlreadyExistsException e) {
              throw OutputPaths.existing(file, option);
            } catch (IOException e) {
              throw OutputPaths.unwritable(file, e);
            }
          }

          @Override
          public void undo() {
            replaced.restore();
          }

          @Override
          public void discard() {
            delete(part, file);
            replaced.forget();
          }

          @Override
          public void settle() {
            replaced.forget();
          }
        });
    try {
      Files.write(part, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      TextFiles.deleteStale(part);
    } catch (IOException e) {
      throw OutputPaths.unwritable(file, e);
    }
  }

  /** Makes a folder and its missing parents. */
  public void folder(Path folder) throws IOException {
    List<Path> missing = new ArrayList<>();
    Path path = folder.toAbsolutePath().normalize();
    while (path != null && !Files.exists(path)) {
      missing.add(path);
      path = path.getParent();
    }
    add(
        folder,
        new Unfinished() {
          @Override
          public void appear() {
            // It exists already: files are written into it.
          }

          @Override
          public void undo() {
            // It is discarded when it is empty.
          }

          @Override
          public void discard() {
            missing.forEach(path -> delete(path, folder));
          }
        });
    // In case the user interrupts the program: Java deletes inner folders first, if they are empty.
    Lists.reverse(missing).forEach(made -> made.toFile().deleteOnExit());
    Files.createDirectories(folder);
  }

  /**
   * Moves all files to their targets.
   *
   * @throws fingering.musicxml.UnwritableScoreException if one cannot be moved; then none appears
   */
  public void publish() {
    List<Unfinished> moved = new ArrayList<>();
    try {
      for (Unfinished file : all) {
        file.appear();
        moved.add(file);
      }
      published = true;
      moved.forEach(Unfinished::settle);
    } finally {
      if (!published) {
        Lists.reverse(moved).forEach(Unfinished::undo);
      }
    }
  }

  /** Deletes what has not appeared. */
  @Override
  public void close() {
    if (!published) {
      Lists.reverse(all).forEach(Unfinished::discard);
    }
  }

  private static void delete(Path file, Path name) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw OutputPaths.unwritable(name, e);
    }
  }
}
