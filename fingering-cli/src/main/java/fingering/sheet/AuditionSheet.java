package fingering.sheet;

import com.google.common.collect.ImmutableList;
import fingering.demand.Skill;
import fingering.lesson.StoredLesson;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.userfile.UserFields;
import java.nio.file.Path;
import java.util.Optional;

/**
 * An audition sheet. Its pieces are read and planned later, one by one: a piece that fails does not
 * affect the others.
 *
 * @param file the sheet, as typed
 * @param title its title
 * @param instrument the instrument, with its usual strings and size
 * @param student the student who plays it; empty for an unknown one
 * @param requiredSkills the skills that the pieces must show together
 * @param inOnePiece whether one piece must show the whole of each skill
 * @param excerptsOnly whether scales do not count
 * @param entries the scales and excerpts, in the order of the sheet
 */
public record AuditionSheet(
    String file,
    String title,
    Instrument instrument,
    Optional<String> student,
    ImmutableList<Skill> requiredSkills,
    boolean inOnePiece,
    boolean excerptsOnly,
    ImmutableList<Entry> entries) {

  /**
   * A scale or an excerpt.
   *
   * @param number its number in the sheet, from 1
   * @param scale whether it is a scale
   * @param fields its keys and values
   */
  public record Entry(int number, boolean scale, UserFields fields) {
    /** The line on which it begins. */
    public int line() {
      return fields.place().line();
    }

    /** The line of the first of these keys that is given; the first line if none is. */
    public int lineOf(String... keys) {
      for (String key : keys) {
        if (fields.has(key)) {
          return fields.place(key).line();
        }
      }
      return line();
    }
  }

  /** The folder of the sheet, from which the paths in it start. */
  public Path folder() {
    Path absolute = Path.of(file).toAbsolutePath();
    return Optional.ofNullable(absolute.getParent()).orElse(absolute);
  }

  /**
   * The player file of the student; empty if the sheet names none.
   *
   * @throws FingeringException if there is no such file
   */
  public Optional<Path> studentFile() {
    return student.map(name -> StoredLesson.studentFile(Path.of(file), name));
  }
}
