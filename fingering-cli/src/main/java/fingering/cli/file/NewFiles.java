package fingering.cli.file;

import com.google.common.collect.Lists;
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
 * The new files and folders that one command writes. Each lies beside its place under another name
 * until all are written; then all of them appear, or none does.
 */
public final class NewFiles implements AutoCloseable {
  /** A file or a folder that is written. */
  public interface Unfinished {
    /**
     * Makes it appear.
     *
     * @throws fingering.musicxml.UnwritableScoreException if it cannot
     */
    void appear();

    /** Takes it away again after it has appeared. */
    void takeBack();

    /** Takes away what has not appeared. */
    void discard();
  }

  private final List<Unfinished> all = new ArrayList<>();

  /** What is told of: files and folders as they were named, but no files of these folders. */
  private final Set<Path> named = new LinkedHashSet<>();

  private boolean appeared;

  /**
   * Takes a file or a folder more.
   *
   * @param as as which it is told of
   */
  public void add(Path as, Unfinished one) {
    if (as.getParent() == null || !named.contains(as.getParent())) {
      named.add(as);
    }
    all.add(one);
  }

  /** Tells which there are now. */
  void tell(CommandSpec spec) {
    named.forEach(file -> WrittenFiles.tell(spec, file));
  }

  /** Takes a score, on its way to a place. */
  public void score(StagedScore score, Path target) {
    add(
        target,
        new Unfinished() {
          @Override
          public void appear() {
            score.moveIntoPlace();
          }

          @Override
          public void takeBack() {
            delete(target, target);
          }

          @Override
          public void discard() {
            score.close();
          }
        });
  }

  /**
   * Writes a text.
   *
   * @param option names the file in messages
   */
  public void text(String text, Path file, String option) {
    Path target = file.toAbsolutePath();
    Path beside = OutputFile.beside(target);
    add(
        file,
        new Unfinished() {
          @Override
          public void appear() {
            try {
              Files.move(beside, target);
            } catch (FileAlreadyExistsException e) {
              throw OutputFile.existing(file, option);
            } catch (IOException e) {
              throw OutputFile.unwritable(file, e);
            }
          }

          @Override
          public void takeBack() {
            delete(target, file);
          }

          @Override
          public void discard() {
            delete(beside, file);
          }
        });
    try {
      Files.writeString(
          beside,
          text,
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE_NEW,
          StandardOpenOption.WRITE);
    } catch (IOException e) {
      throw OutputFile.unwritable(file, e);
    }
  }

  /** Makes a folder, and those in which it lies, as far as they are not there. */
  public void folder(Path folder) throws IOException {
    List<Path> missing = new ArrayList<>();
    Path place = folder.toAbsolutePath().normalize();
    while (place != null && !Files.exists(place)) {
      missing.add(place);
      place = place.getParent();
    }
    add(
        folder,
        new Unfinished() {
          @Override
          public void appear() {
            // It is there, so that files can be written into it.
          }

          @Override
          public void takeBack() {
            // Discarded when all that is in it has gone.
          }

          @Override
          public void discard() {
            missing.forEach(made -> delete(made, folder));
          }
        });
    Files.createDirectories(folder);
  }

  /**
   * Makes all of them appear.
   *
   * @throws fingering.musicxml.UnwritableScoreException if one cannot; then none does
   */
  void appear() {
    List<Unfinished> there = new ArrayList<>();
    try {
      for (Unfinished one : all) {
        one.appear();
        there.add(one);
      }
      appeared = true;
    } finally {
      if (!appeared) {
        Lists.reverse(there).forEach(Unfinished::takeBack);
      }
    }
  }

  /** Takes away what has not appeared. */
  @Override
  public void close() {
    if (!appeared) {
      Lists.reverse(all).forEach(Unfinished::discard);
    }
  }

  private static void delete(Path file, Path named) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw OutputFile.unwritable(named, e);
    }
  }
}
