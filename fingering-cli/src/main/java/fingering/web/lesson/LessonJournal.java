package fingering.web.lesson;

import static fingering.page.view.PageText.text;

import com.google.common.collect.Streams;
import fingering.lesson.StoredLesson;
import fingering.practice.Journal;
import fingering.practice.JournalEntry;
import fingering.practice.JournalException;
import fingering.practice.JournalFile;
import fingering.tables.FingeringException;
import fingering.web.folder.FileStamp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The journal of a lesson. A lesson comes from anywhere, so a journal that it names is used only in
 * the folder of the lesson or of the teacher, and only if it is a journal.
 *
 * @param path its file, which may be missing
 */
public record LessonJournal(Path path) {

  /**
   * The journal that a lesson names; empty if it names none.
   *
   * @param folder the folder of the teacher
   * @throws FingeringException if it lies elsewhere
   */
  public static Optional<LessonJournal> of(StoredLesson lesson, Path folder) {
    Optional<Path> file = lesson.journalFile();
    file.ifPresent(
        path -> {
          if (!inside(path, lesson.file().toAbsolutePath().resolveSibling(""), folder)) {
            throw new FingeringException(text("practice.outside", path));
          }
        });
    return file.map(LessonJournal::new);
  }

  /** The name of a new journal beside a lesson; of one that is there, if it is a journal. */
  public static String fresh(StoredLesson lesson) {
    Path file =
        LessonKeeper.first(
            lesson.file().resolveSibling(lesson.name() + ".journal"), LessonJournal::usable);
    return StoredLesson.nameBeside(lesson.file(), file);
  }

  private static boolean usable(Path file) {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    try {
      return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          && new JournalFile(file).read().badLines().isEmpty();
    } catch (JournalException e) {
      return false;
    }
  }

  /** Whether a file lies in one of some folders, wherever links lead. */
  private static boolean inside(Path file, Path... folders) {
    return Stream.of(folders).anyMatch(folder -> inside(file, folder));
  }

  private static boolean inside(Path file, Path folder) {
    try {
      Path real =
          Files.exists(file, LinkOption.NOFOLLOW_LINKS)
              ? file.toRealPath()
              : file.toAbsolutePath().normalize().resolveSibling("").toRealPath();
      return real.startsWith(folder.toRealPath());
    } catch (IOException e) {
      return false;
    }
  }

  public String name() {
    return String.valueOf(path.getFileName());
  }

  /** What changes when the file is changed. */
  public String stamp() {
    FileStamp stamp = FileStamp.of(path);
    return stamp.time().toMillis() + "-" + stamp.size();
  }

  /**
   * The last entry if it is of a day; empty if there is none or the file cannot be read.
   *
   * @param day the day
   */
  public Optional<JournalEntry> lastOf(LocalDate day) {
    try {
      return Streams.findLast(new JournalFile(path).read().entries().stream())
          .filter(entry -> entry.when().toLocalDate().equals(day));
    } catch (JournalException e) {
      return Optional.empty();
    }
  }

  /**
   * Writes a line at its end.
   *
   * @throws FingeringException if the file is not a journal or cannot be written
   */
  public void add(JournalEntry entry) {
    Journal before = new JournalFile(path).read();
    if (before.entries().isEmpty() && !before.badLines().isEmpty()) {
      throw new FingeringException(text("practice.no-entries", name()));
    }
    new JournalFile(path).add(entry);
  }

  /**
   * Removes the last line if it is an entry.
   *
   * @throws FingeringException if it is another one by now
   */
  public void takeBack(JournalEntry entry) {
    new JournalFile(path).takeBack(entry);
  }
}
