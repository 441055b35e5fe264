package fingering.cli.lesson;

import fingering.lesson.StoredLesson;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The lesson that gives what is not typed. */
public final class LessonOption {
  static final String DESCRIPTION =
      "A lesson: a file that names score, part, measures, student, plan, hearing and journal. Options on the command line override it.";

  @Option(names = "--lesson", paramLabel = "FILE", description = DESCRIPTION)
  Optional<Path> file = Optional.empty();

  /** The file of the lesson, if one is named. */
  public Optional<Path> file() {
    return file;
  }

  /** The lesson, if one is named. */
  public Optional<StoredLesson> read() {
    return file.map(StoredLesson::read);
  }
}
