package fingering.cli.option;

import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.musicxml.SelectionException;
import fingering.musicxml.file.ScoreFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The score: a file, or a tune typed on the command line. */
public final class ScoreArgument extends TuneOptions {
  /** The word that newcomers type to get the built-in excerpt. */
  private static final String DEMO = "demo";

  @Spec(Spec.Target.MIXEE)
  CommandSpec command;

  @Parameters(
      paramLabel = "SCORE",
      arity = "0..1",
      description = "A score in MusicXML (.musicxml, .xml, .mxl) or ABC notation (.abc).")
  Optional<Path> file = Optional.empty();

  @Option(
      names = "--abc",
      paramLabel = "TUNE",
      description =
          "Music typed in ABC notation instead of a file; \\n"
              + " starts a new line: --abc 'K:G clef=alto\\n"
              + "D2 GA B4|'.")
  Optional<String> abc = Optional.empty();

  /**
   * Reads the score.
   *
   * @throws ParameterException if no score is given, or two
   */
  public ScoreFile read() {
    if (file.isPresent() && abc.isPresent()) {
      throw usageError("a score and --abc are given; leave one of them out");
    }
    if (abc.isPresent()) {
      return read("--abc", abc.get().replace("\\n", "\n"));
    }
    Path path =
        file.orElseThrow(
            () ->
                usageError(
                    "no score is given; name a file, such as docs/demo/demo.musicxml, or type music"
                        + " after --abc"));
    if (path.toString().equals(DEMO) && !Files.exists(path)) {
      throw new SelectionException(
          "There is no file demo: the built-in excerpt is docs/demo/demo.musicxml, and 'fingering"
              + " demo' compares it.");
    }
    return read(path);
  }

  /** Takes the score of a lesson, unless one is typed. */
  public void from(StoredLesson lesson) {
    if (file.isEmpty() && abc.isEmpty()) {
      file = Optional.of(lesson.scoreFile());
      tune = tune.or(lesson.lesson()::tune);
    }
  }

  /** Whether the score is that of a lesson. */
  boolean isOf(StoredLesson lesson) {
    return file.map(ScoreArgument::full).equals(Optional.of(full(lesson.scoreFile())));
  }

  private static Path full(Path path) {
    return path.toAbsolutePath().normalize();
  }

  /**
   * Adds the score to a lesson.
   *
   * @param target the file of the lesson
   * @throws ParameterException if the music was typed: a lesson names a file
   */
  public Lesson addTo(Lesson lesson, Path target) {
    return lesson.withScore(
        file.map(path -> StoredLesson.nameBeside(target, path))
            .orElseThrow(
                () ->
                    usageError(
                        "a lesson names the file of its score; save the music of --abc in a file"
                            + " that ends in .abc, and name that file")),
        tune);
  }

  /** The name of the file without its folder; empty if there is none. */
  public String fileName() {
    return file.map(Path::getFileName).map(Path::toString).orElse("");
  }

  private ParameterException usageError(String sentence) {
    return new ParameterException(command.commandLine(), sentence);
  }
}
