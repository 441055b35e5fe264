package fingering.cli.lesson;

import com.google.common.collect.ImmutableList;
import fingering.lesson.StoredLesson;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The lessons to compare. */
public final class LessonsOption {
  @Option(
      names = "--lesson",
      paramLabel = "FILE",
      description =
          LessonOption.DESCRIPTION
              + " Repeat it to see the chosen plans of several students side by side.")
  List<Path> files = List.of();

  /** The file of the lesson, if exactly one is named. */
  public Optional<Path> single() {
    return files.size() == 1 ? Optional.of(files.get(0)) : Optional.empty();
  }

  /** The lessons, in the order typed. */
  public ImmutableList<StoredLesson> read() {
    return files.stream().map(StoredLesson::read).collect(ImmutableList.toImmutableList());
  }
}
