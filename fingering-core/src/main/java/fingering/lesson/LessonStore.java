package fingering.lesson;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import fingering.userfile.UserFileStore;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Saves lessons. A lesson may be saved over; any other file never. A lesson is written beside its
 * file and moved into place, so that the file holds the old text or the new one, whenever the
 * program ends.
 */
public final class LessonStore {
  private static final UserFileStore<Lesson> STORE =
      new UserFileStore<>(
          "a lesson",
          "remove some of its plans",
          LessonFile::parse,
          LessonFile::text,
          LessonFile::update);

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
    STORE.check(file);
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
    UserFileStore.Saved saved = STORE.save(file, lesson, before.map(StoredLesson::text), today);
    return new Saved(
        new StoredLesson(file, lesson, saved.text()), saved.copy(), saved.lostRemarks());
  }
}
