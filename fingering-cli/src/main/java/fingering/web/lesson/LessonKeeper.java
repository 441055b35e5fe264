package fingering.web.lesson;

import static fingering.page.view.PageText.text;

import fingering.files.FileProblem;
import fingering.lesson.Lesson;
import fingering.lesson.LessonFile;
import fingering.lesson.LessonStore;
import fingering.lesson.StoredLesson;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.tables.FingeringException;
import fingering.web.folder.FileStamp;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Saves open lessons in their files. A score that was dropped on the page is copied into the
 * teacher's folder when its lesson is saved first. No file is replaced but a lesson by itself.
 */
public final class LessonKeeper {
  /** More files of one name are a mistake. */
  private static final int MOST = 1000;

  private final Path folder;
  private final Clock clock;

  /**
   * A keeper.
   *
   * @param folder the teacher's folder; it is made when it is needed
   * @param clock the time, for the copies of lessons that are kept once a day
   */
  public LessonKeeper(Path folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /** A lesson on a score that is not in the folder yet, as it will be there. */
  StoredLesson of(Path score) {
    return new StoredLesson(
        folder.resolve(score.getFileName() + ".yaml"),
        Lesson.of(score.toAbsolutePath().toString()),
        "");
  }

  /**
   * Saves a lesson.
   *
   * @param open the lesson with its change
   * @param before the lesson as it was read from its file or saved last
   * @throws FingeringException if it cannot be saved; the message is one sentence
   */
  public OpenLesson save(OpenLesson open, StoredLesson before) {
    if (open.saved()) {
      return open.savedAs(
          saved(before.file(), open.lesson(), Optional.of(before), open.score()), open.stamp());
    }
    Path score = open.dropped().map(file -> copied(file, open.name())).orElseGet(before::scoreFile);
    Path file = free(score.resolveSibling(stem(score) + ".yaml"));
    Lesson lesson =
        open.lesson().withScore(StoredLesson.nameBeside(file, score), open.lesson().tune());
    return open.savedAs(saved(file, lesson, Optional.empty(), open.score()), FileStamp.of(score));
  }

  /**
   * Saves a lesson. The page knows the part by its number. The file goes on naming it as it did, or
   * by the name that a person would use.
   */
  private StoredLesson saved(Path file, Lesson lesson, Optional<StoredLesson> before, Score score) {
    Optional<PartInfo> part = lesson.part().map(score::part);
    Optional<String> old =
        before
            .flatMap(known -> LessonFile.parse(known.name(), known.text()).part())
            .filter(name -> names(name, part, score));
    Lesson named = lesson.withPart(old.or(() -> part.map(score::nameOrNumber)));
    StoredLesson saved = LessonStore.save(file, named, before, LocalDate.now(clock)).lesson();
    return new StoredLesson(saved.file(), lesson, saved.text());
  }

  private static boolean names(String name, Optional<PartInfo> part, Score score) {
    try {
      return Optional.of(score.part(name)).equals(part);
    } catch (FingeringException e) {
      // The parts have other names now.
      return false;
    }
  }

  /** Copies a score into the teacher's folder under its name, or a similar one. */
  private Path copied(Path from, String name) {
    try {
      Files.createDirectories(folder);
      byte[] content = Files.readAllBytes(from);
      for (int i = 1; i < MOST; i++) {
        Path target = numbered(folder.resolve(usable(name)), i);
        try {
          Files.write(target, content, StandardOpenOption.CREATE_NEW);
          return target;
        } catch (FileAlreadyExistsException e) {
          if (Files.isRegularFile(target) && Files.mismatch(from, target) < 0) {
            return target;
          }
        }
      }
      throw new FingeringException(text("save.names", name));
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(folder, e), e);
    }
  }

  /** A name without the signs that some system refuses. */
  private static String usable(String name) {
    String usable = name.replaceAll("[\\\\/:*?\"<>|]", "-").replaceFirst("^\\.+", "");
    return usable.isBlank() ? "score.musicxml" : usable;
  }

  private static Path free(Path wanted) {
    return first(wanted, file -> !Files.exists(file, LinkOption.NOFOLLOW_LINKS));
  }

  /**
   * The first file that fits, of a name and similar ones.
   *
   * @throws FingeringException if none of them fits
   */
  public static Path first(Path wanted, Predicate<Path> fits) {
    return IntStream.range(1, MOST)
        .mapToObj(i -> numbered(wanted, i))
        .filter(fits)
        .findFirst()
        .orElseThrow(() -> new FingeringException(text("save.names", wanted.getFileName())));
  }

  /** {@code mill-2.yaml} for the second file of that name. */
  private static Path numbered(Path file, int number) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return number == 1
        ? file
        : file.resolveSibling(stem(file) + "-" + number + (dot > 0 ? name.substring(dot) : ""));
  }

  private static String stem(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
