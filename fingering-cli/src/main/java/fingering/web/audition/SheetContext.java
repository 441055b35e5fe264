package fingering.web.audition;

import fingering.lesson.StoredLesson;
import fingering.sheet.SheetContent;
import fingering.sheet.StoredSheet;
import fingering.tables.FingeringException;
import fingering.userfile.UserFileStore;
import fingering.web.folder.StudentsFolder;
import fingering.web.folder.TeachersFolder;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What the pages of audition sheets and of scales work with.
 *
 * @param folder the scores and lessons
 * @param sheets the sheets
 * @param students the students
 * @param adviser plans sheets and scales
 * @param clock the time on this computer
 */
public record SheetContext(
    TeachersFolder folder,
    SheetsFolder sheets,
    StudentsFolder students,
    SheetAdviser adviser,
    Clock clock) {
  /** The date on this computer. */
  public LocalDate today() {
    return LocalDate.now(clock);
  }

  /** The student of a sheet; empty if it is for anyone, or its student is not in the folder. */
  public Optional<StudentsFolder.Entry> student(StoredSheet sheet) {
    String name = sheet.content().student();
    return students.list().students().stream()
        .filter(one -> named(sheet, one).equals(name))
        .findFirst();
  }

  /** The name by which a sheet calls a student. */
  public static String named(StoredSheet sheet, StudentsFolder.Entry student) {
    return StoredLesson.studentName(sheet.file(), student.stored().file());
  }

  /**
   * Saves a sheet.
   *
   * @throws FingeringException if it has changed since it was read, or cannot be written; the
   *     message is one sentence
   */
  public UserFileStore.Saved save(SheetsFolder.Entry sheet, SheetContent content) {
    return sheets.save(sheet.stored(), content, today());
  }
}
