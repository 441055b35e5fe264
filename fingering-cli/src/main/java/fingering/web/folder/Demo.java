package fingering.web.folder;

import static fingering.page.view.PageText.text;

import com.google.common.io.Resources;
import fingering.files.FileProblem;
import fingering.lesson.Lesson;
import fingering.lesson.LessonStore;
import fingering.musicxml.file.ScoreFile;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;

/** The score that comes with the program, as a first lesson. */
public final class Demo {
  /** The name of its file. */
  public static final String SCORE = "demo.musicxml";

  /** The name of the file of the lesson. */
  public static final String LESSON = "demo.yaml";

  private static final String PART = "Viola";

  private Demo() {}

  /** The score as MusicXML. */
  public static byte[] score() {
    try {
      return Resources.toByteArray(Resources.getResource(Demo.class, "/fingering/demo/" + SCORE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Saves the score and a lesson for it in a folder, which is made if it does not exist. Files of
   * these names that exist are kept.
   *
   * @param today for the store of lessons
   * @throws FingeringException if they cannot be saved; the message is one sentence
   */
  public static void save(Path folder, LocalDate today) {
    Path score = folder.resolve(SCORE);
    Path lesson = folder.resolve(LESSON);
    try {
      Files.createDirectories(folder);
      write(score);
    } catch (FileAlreadyExistsException e) {
      throw new FingeringException(text("demo.taken", e.getFile()), e);
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(score, e), e);
    }
    if (!Files.exists(lesson)) {
      LessonStore.save(
          lesson, Lesson.of(SCORE).withPart(Optional.of(PART)), Optional.empty(), today);
    }
  }

  private static void write(Path target) throws IOException {
    byte[] content = score();
    if (Files.exists(target)) {
      // Saved before, perhaps by another window.
      if (Arrays.equals(Files.readAllBytes(target), content)) {
        return;
      }
      throw new FileAlreadyExistsException(target.toString());
    }
    Path part = ScoreFile.temporarySibling(target);
    try {
      Files.write(part, content, StandardOpenOption.CREATE_NEW);
      // Fails if another program has created the file in the meantime.
      Files.move(part, target);
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
