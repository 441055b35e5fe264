package fingering.web.folder;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.files.FileProblem;
import fingering.lesson.StoredLesson;
import fingering.player.Player;
import fingering.player.PlayerStore;
import fingering.player.StoredPlayer;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The students of a teacher: the player files in the folder {@code students} of the teacher's
 * folder. Pages know them by ids that say nothing about their names.
 */
public final class StudentsFolder {
  private static final String STUDENTS = "students";
  private static final String ENDING = ".yaml";

  private final Path teachers;
  private final Path folder;
  private final UnaryOperator<String> ids;

  /**
   * Creates the list.
   *
   * @param teachers the teacher's folder; it need not exist yet
   * @param ids the id of a file by its name, of 24 letters that say nothing about it
   */
  public StudentsFolder(Path teachers, UnaryOperator<String> ids) {
    this.teachers = teachers;
    this.ids = ids;
    folder = teachers.resolve(STUDENTS);
  }

  /**
   * A student.
   *
   * @param id the id in addresses and menus
   * @param name the name, to be shown
   * @param stored the player file
   */
  public record Entry(String id, String name, StoredPlayer stored) {
    /** What the player file says. */
    public Player player() {
      return stored.player();
    }

    /** How a lesson names the student. */
    public String nameIn(StoredLesson lesson) {
      return StoredLesson.studentName(lesson.file(), stored.file());
    }
  }

  /**
   * What is in the folder.
   *
   * @param students the students, in the order of their names
   * @param problems a sentence for each file that cannot be read
   */
  public record Listing(ImmutableList<Entry> students, ImmutableList<String> problems) {}

  /** The folder of the player files. */
  public Path path() {
    return folder;
  }

  /**
   * Lists the students.
   *
   * @throws FingeringException if the folder cannot be read
   */
  public Listing list() {
    ImmutableList.Builder<Entry> students = ImmutableList.builder();
    ImmutableList.Builder<String> problems = ImmutableList.builder();
    for (Path file : files()) {
      String name = String.valueOf(file.getFileName());
      if (!Inside.folder(teachers, file)) {
        problems.add(text("students.link", name));
        continue;
      }
      try {
        students.add(new Entry(ids.apply(name), shown(name), StoredPlayer.read(file)));
      } catch (FingeringException e) {
        problems.add(String.valueOf(e.getMessage()).replace(file.toString(), name));
      }
    }
    return new Listing(students.build(), problems.build());
  }

  private List<Path> files() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
          .filter(file -> String.valueOf(file.getFileName()).endsWith(ENDING))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new FingeringException(FileProblem.reading(folder, e), e);
    }
  }

  /** The name of a student: {@code Imke} for {@code imke.yaml}. */
  private static String shown(String file) {
    return file.substring(0, 1).toUpperCase(Locale.ROOT)
        + file.substring(1, file.length() - ENDING.length());
  }

  /** The id of the instrument of the first student who has one; empty if there is none. */
  public String instrument() {
    return list().students().stream()
        .flatMap(entry -> entry.player().instrument().stream())
        .map(Instrument::id)
        .findFirst()
        .orElse("");
  }

  /** The student with an id; empty if there is none. */
  public Optional<Entry> student(String id) {
    return list().students().stream().filter(entry -> entry.id().equals(id)).findFirst();
  }

  /** The student of a lesson; empty if it has none, or one who is not in this folder. */
  public Optional<Entry> of(StoredLesson lesson) {
    return fileOf(lesson).flatMap(this::in);
  }

  private static Optional<Path> fileOf(StoredLesson lesson) {
    try {
      return lesson.studentFile();
    } catch (FingeringException e) {
      // The plans say so.
      return Optional.empty();
    }
  }

  /**
   * The file of a new student; empty if the name cannot be used.
   *
   * @param name the name as typed
   */
  public Optional<Path> fileFor(String name) {
    return NewName.in(folder, name, ENDING);
  }

  /** Whether there is a file of a name, in capital or small letters. */
  public boolean taken(Path file) {
    return NewName.taken(file);
  }

  /**
   * Saves a student.
   *
   * @param file the player file
   * @param before the player as read from it; empty for a new student
   * @throws FingeringException if that is not possible; the message is one sentence
   */
  public PlayerStore.Saved save(
      Path file, Player player, Optional<StoredPlayer> before, LocalDate today) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(folder, e), e);
    }
    if (!Inside.folder(teachers, folder)) {
      throw new FingeringException(text("students.link", folder));
    }
    return PlayerStore.save(file, player, before, today);
  }

  private static Path absolute(Path file) {
    return file.toAbsolutePath().normalize();
  }

  /** The student in a file; empty if it is not in the folder any more. */
  public Optional<Entry> in(Path file) {
    return list().students().stream()
        .filter(entry -> absolute(entry.stored().file()).equals(absolute(file)))
        .findFirst();
  }
}
