package fingering.lesson;

import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.practice.JournalEntry;
import fingering.practice.JournalFile;
import fingering.tables.FingeringException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A program of its own that writes a journal or a lesson until it is killed. It prints a line for
 * each entry or state that it has written, and none for those that were refused.
 */
final class FileWriterProgram {
  private FileWriterProgram() {}

  /**
   * Writes.
   *
   * @param arguments journal or lesson, the file, and the name of this writer
   */
  public static void main(String[] arguments) {
    Path file = Path.of(arguments[1]);
    // It also ends when nobody reads what it prints any more.
    for (int i = 0; !System.out.checkError(); i++) {
      String name = arguments[2] + "-" + i;
      try {
        if (arguments[0].equals("journal")) {
          new JournalFile(file)
              .add(
                  new JournalEntry(
                      LocalDateTime.parse("2026-11-30T18:30"),
                      Optional.of(Tempo.parse("quarter=60")),
                      MeasureSpan.WHOLE,
                      name));
        } else {
          save(file, name);
        }
        System.out.println(name);
      } catch (FingeringException e) {
        if (!e.getMessage().matches("(?s).*(try again|already exists).*")) {
          System.out.println("! " + e.getMessage());
        }
      }
    }
  }

  /** Saves a lesson whose part and measures both name this state. */
  private static void save(Path file, String name) {
    Optional<StoredLesson> before =
        Files.exists(file) ? Optional.of(StoredLesson.read(file)) : Optional.empty();
    Lesson lesson =
        before
            .map(StoredLesson::lesson)
            .orElseGet(() -> Lesson.of("quartet.mxl"))
            .withPart(Optional.of(name))
            .withJournal(Optional.of(name));
    LessonStore.save(file, lesson, before, LocalDate.parse("2026-11-30"));
  }
}
