package fingering.lesson;

import com.google.common.collect.ImmutableList;
import fingering.files.FileProblem;
import fingering.files.TextFiles;
import fingering.lesson.LessonFile.Update;
import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Saves lessons. A lesson may be saved over; any other file never. A lesson is written beside its
 * file and moved into place, so that the file holds the old text or the new one, whenever the
 * program ends.
 */
public final class LessonStore {
  private LessonStore() {}

  /**
   * What was saved.
   *
   * @param lesson the lesson as saved
   * @param copy the copy of the text before, if this is the first change of the day
   * @param lostRemarks the remarks of the text before that are gone
   */
  public record Saved(
      StoredLesson lesson, Optional<Path> copy, ImmutableList<String> lostRemarks) {}

  /**
   * Checks that a lesson can be saved in a file: there is none yet, or it is a lesson.
   *
   * @throws FingeringException if it is another file; the message is one sentence
   */
  public static void check(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      existing(file);
    }
  }

  private static StoredLesson existing(Path file) {
    try {
      return StoredLesson.read(file);
    } catch (FingeringException e) {
      throw new FingeringException(
          "%s is not a lesson, or has a mistake, and is not replaced: choose another name, or correct it. (%s)"
              .formatted(file, e.getMessage()),
          e);
    }
  }

  /**
   * Saves a lesson.
   *
   * @param file the file; if there is one, it must be a lesson
   * @param before the lesson as it was read from that file, if it was; the file must not have
   *     changed since
   * @param today the day, for the name of the copy: {@code mill.yaml.2026-12-12~} keeps what the
   *     lesson said before the first change of that day
   * @throws FingeringException if the file is not a lesson, has changed since it was read, or
   *     cannot be written; the message is one sentence, and the file is as it was
   */
  public static Saved save(
      Path file, Lesson lesson, Optional<StoredLesson> before, LocalDate today) {
    try {
      if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        String text = LessonFile.text(lesson);
        checkSize(file, text);
        TextFiles.create(file.toAbsolutePath(), text);
        return new Saved(
            new StoredLesson(file, lesson, text), Optional.empty(), ImmutableList.of());
      }
      StoredLesson old = existing(file);
      if (before.isPresent() && !before.get().text().equals(old.text())) {
        throw new FingeringException(
            "%s has changed since it was read, and was not saved: run the command again."
                .formatted(file));
      }
      Update update = LessonFile.update(old.text(), lesson);
      if (update.text().equals(old.text())) {
        return new Saved(old, Optional.empty(), ImmutableList.of());
      }
      checkSize(file, update.text());
      Optional<Path> copy = TextFiles.keep(file, old.text(), today);
      TextFiles.replace(file, update.text());
      return new Saved(new StoredLesson(file, lesson, update.text()), copy, update.lostRemarks());
    } catch (FileAlreadyExistsException e) {
      throw new FingeringException(
          "%s was made by another program meanwhile: run the command again.".formatted(file), e);
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(file, e), e);
    }
  }

  private static void checkSize(Path file, String text) {
    if (text.getBytes(StandardCharsets.UTF_8).length > SmallFile.MAX_KIB * 1024) {
      throw new FingeringException(
          "%s would be larger than %d KiB, and was not saved: remove some of its plans."
              .formatted(file, SmallFile.MAX_KIB));
    }
  }
}
