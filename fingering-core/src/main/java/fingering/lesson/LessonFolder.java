package fingering.lesson;

import com.google.common.collect.ImmutableList;
import fingering.files.FileProblem;
import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The lessons of a folder.
 *
 * @param lessons the lessons, in the order of their names
 * @param problems a sentence for each file that looks like a lesson and cannot be read
 */
public record LessonFolder(ImmutableList<StoredLesson> lessons, ImmutableList<String> problems) {
  /** A line that every lesson has and no other file of a user. */
  private static final Pattern SCORE = Pattern.compile("(?m)^\\s*\\{?\\s*\"?score\"?\\s*:");

  /**
   * Reads the lessons of a folder, but not of the folders in it. Players, briefs and other files in
   * YAML are passed over.
   *
   * @throws FingeringException if the folder cannot be read
   */
  public static LessonFolder read(Path folder) {
    ImmutableList<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files =
          all.filter(LessonFolder::mayBeLesson).sorted().collect(ImmutableList.toImmutableList());
    } catch (IOException e) {
      throw new FingeringException(FileProblem.reading(folder, e), e);
    }
    ImmutableList.Builder<StoredLesson> lessons = ImmutableList.builder();
    ImmutableList.Builder<String> problems = ImmutableList.builder();
    for (Path file : files) {
      try {
        if (SCORE.matcher(SmallFile.text(file, "a lesson")).find()) {
          lessons.add(StoredLesson.read(file));
        }
      } catch (FingeringException e) {
        problems.add(String.valueOf(e.getMessage()));
      }
    }
    return new LessonFolder(lessons.build(), problems.build());
  }

  private static boolean mayBeLesson(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return (name.endsWith(".yaml") || name.endsWith(".yml"))
        && !name.startsWith(".")
        && Files.isRegularFile(file);
  }
}
