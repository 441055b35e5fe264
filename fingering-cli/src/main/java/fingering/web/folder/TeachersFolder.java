package fingering.web.folder;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.files.FileProblem;
import fingering.lesson.Lesson;
import fingering.lesson.LessonFolder;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The folder with the scores and lessons of a teacher. Pages know its files by ids that say nothing
 * about their names, so that no request can name another file.
 */
public final class TeachersFolder {
  private final Path folder;
  private final UnaryOperator<String> ids;

  /**
   * Creates the list.
   *
   * @param folder the folder; it need not exist yet
   * @param ids the id of a file by its name, of 24 letters that say nothing about it
   */
  public TeachersFolder(Path folder, UnaryOperator<String> ids) {
    this.folder = folder;
    this.ids = ids;
  }

  /**
   * A file of the folder.
   *
   * @param id its id
   * @param name its name
   * @param lesson what it says, if it is a lesson
   */
  public record Entry(String id, String name, Optional<Lesson> lesson) {}

  /**
   * What is in the folder.
   *
   * @param entries the scores and lessons, in the order of their names
   * @param problems a sentence for each file that cannot be opened
   */
  public record Listing(ImmutableList<Entry> entries, ImmutableList<String> problems) {

    /** Whether there is nothing to open. */
    public boolean empty() {
      return entries.isEmpty();
    }
  }

  /** The folder. */
  public Path path() {
    return folder;
  }

  /**
   * Lists the folder.
   *
   * @throws FingeringException if it cannot be read
   */
  public Listing list() {
    if (!Files.isDirectory(folder)) {
      return new Listing(ImmutableList.of(), ImmutableList.of());
    }
    LessonFolder read = LessonFolder.read(folder);
    List<String> problems = new ArrayList<>(read.problems());
    Map<Path, Lesson> lessons = new HashMap<>();
    read.lessons().forEach(stored -> lessons.put(stored.file(), stored.lesson()));
    ImmutableList.Builder<Entry> entries = ImmutableList.builder();
    for (Path file : files()) {
      String name = String.valueOf(file.getFileName());
      Optional<Lesson> lesson = Optional.ofNullable(lessons.get(file));
      if (lesson.isEmpty() && !ScoreName.of(name).readable()) {
        continue;
      }
      if (Inside.folder(folder, file)) {
        entries.add(new Entry(id(name), name, lesson));
      } else {
        problems.add(text("home.link", name));
      }
    }
    return new Listing(entries.build(), ImmutableList.copyOf(problems));
  }

  private List<Path> files() {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new FingeringException(FileProblem.reading(folder, e), e);
    }
  }

  /** The id of a file of the folder. */
  public String id(String name) {
    return ids.apply(name);
  }

  /** The id of a file; empty if it is not one of this folder. */
  public Optional<String> idOf(Path file) {
    return list().entries().stream()
        .filter(entry -> folder.resolve(entry.name()).equals(file.toAbsolutePath().normalize()))
        .map(Entry::id)
        .findFirst();
  }

  /** The file with an id; empty if there is none, or it is a link that leads out of the folder. */
  public Optional<Path> file(String id) {
    return list().entries().stream()
        .filter(entry -> entry.id().equals(id))
        .map(entry -> folder.resolve(entry.name()))
        .findFirst();
  }
}
