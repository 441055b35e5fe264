package fingering.lesson;

import fingering.files.FileNames;
import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A lesson on disk.
 *
 * @param file its file
 * @param lesson what it says
 * @param text its text, as read
 */
public record StoredLesson(Path file, Lesson lesson, String text) {
  /** The folder of players, beside the lesson. */
  private static final String STUDENTS = "students";

  /**
   * Reads a lesson.
   *
   * @throws FingeringException if the file cannot be read or is not a lesson; the message is one
   *     sentence
   */
  public static StoredLesson read(Path file) {
    String text = SmallFile.text(file, "a lesson");
    return new StoredLesson(file, LessonFile.parse(file.toString(), text), text);
  }

  /** The name of the file without its ending. */
  public String name() {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /**
   * The file of the score.
   *
   * @throws FingeringException if its name cannot be that of a file
   */
  public Path scoreFile() {
    return beside(lesson.score());
  }

  /**
   * The file of the journal; empty if the lesson has none.
   *
   * @throws FingeringException if its name cannot be that of a file
   */
  public Optional<Path> journalFile() {
    return lesson.journal().map(this::beside);
  }

  /**
   * The player file of the student, as {@link #studentFile(Path, String)} finds it. Empty if the
   * lesson has no student.
   *
   * @throws FingeringException if there is no such file
   */
  public Optional<Path> studentFile() {
    return lesson.student().map(name -> studentFile(file, name));
  }

  /**
   * The player file of a student: of imke, {@code students/imke.yaml} or else {@code imke.yaml},
   * beside the file that names the student; or the file that it names.
   *
   * @param naming the lesson, or another file that names a student
   * @throws FingeringException if there is no such file
   */
  public static Path studentFile(Path naming, String name) {
    return candidates(naming, name)
        .filter(Files::exists)
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "%s names the student %s, but there is no player file %s: write one, or correct the name."
                        .formatted(
                            naming, name, candidates(naming, name).findFirst().orElseThrow())));
  }

  private static Stream<Path> candidates(Path naming, String name) {
    return isFile(name)
        ? Stream.of(beside(naming, name))
        : Stream.of(
            beside(naming, STUDENTS + "/" + name + ".yaml"), beside(naming, name + ".yaml"));
  }

  /** Whether the name of a student is the name of a file. */
  static boolean isFile(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return Stream.of(".yaml", ".yml", ".json").anyMatch(lower::endsWith);
  }

  /**
   * How a lesson names the student of a player file: by the bare name if the file is found by it,
   * otherwise by the file.
   *
   * @param lesson the file of the lesson
   * @param player the player file
   */
  public static String studentName(Path lesson, Path player) {
    String name = String.valueOf(player.getFileName());
    String bare = name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : "";
    Path folder = folder(lesson);
    Path wanted = player.toAbsolutePath().normalize();
    Path first = folder.resolve(STUDENTS).resolve(name);
    boolean found =
        wanted.equals(first) || (wanted.equals(folder.resolve(name)) && !Files.exists(first));
    return found && !bare.isBlank() && !isFile(bare) ? bare : nameBeside(lesson, player);
  }

  /** The name of a file as a lesson writes it: relative to the folder of the lesson. */
  public static String nameBeside(Path lesson, Path other) {
    Path wanted = other.toAbsolutePath().normalize();
    Path folder = folder(lesson);
    boolean sameRoot = folder.getRoot() != null && folder.getRoot().equals(wanted.getRoot());
    return (sameRoot ? folder.relativize(wanted) : wanted).toString().replace('\\', '/');
  }

  private static Path folder(Path lesson) {
    Path folder = lesson.toAbsolutePath().normalize().getParent();
    return folder == null ? lesson.toAbsolutePath() : folder;
  }

  /**
   * A file whose name is relative to the folder of the lesson.
   *
   * @throws FingeringException if the text cannot be the name of a file
   */
  public Path beside(String name) {
    return beside(file, name);
  }

  private static Path beside(Path file, String name) {
    try {
      return file.resolveSibling(name.strip());
    } catch (InvalidPathException e) {
      throw new FingeringException(file + ": " + FileNames.fault(name) + ".", e);
    }
  }

  /** A plan of this lesson, with the names of its files as seen from the current folder. */
  public LessonPlan here(LessonPlan plan) {
    return plan.withFiles(name -> beside(name).toString());
  }
}
