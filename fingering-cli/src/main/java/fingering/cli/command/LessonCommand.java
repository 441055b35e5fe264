package fingering.cli.command;

import fingering.cli.output.OutputFile;
import fingering.cli.terminal.Screen;
import fingering.cli.text.LessonListText;
import fingering.lesson.LessonFile;
import fingering.lesson.LessonFolder;
import fingering.lesson.StoredLesson;
import fingering.musicxml.SelectionException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists lessons and shows them. */
@Command(
    name = "lesson",
    description = "Lists the lessons of a folder, or shows one.",
    subcommands = {LessonCommand.Listing.class, LessonCommand.Show.class},
    footer = {
      "",
      "A lesson is a small file: one student, one excerpt. Save one with --save-lesson.",
      "",
      "Examples:",
      "  fingering lesson list docs/examples",
      "  fingering lesson show docs/examples/imke-mill.yaml"
    })
final class LessonCommand extends BaseCommand {
  @Override
  public Integer call() {
    throw usageError("choose one of lesson list, lesson show");
  }

  /** Lists the lessons of a folder. */
  @Command(
      name = "list",
      description =
          "Lists the lessons of a folder: student, score, measures, chosen plan, hearing, and the last clean tempo of the journal.",
      footer = {"", "Examples:", "  fingering lesson list docs/examples"})
  static final class Listing extends BaseCommand {
    @Parameters(
        paramLabel = "FOLDER",
        arity = "0..1",
        description =
            "The folder. Default: this folder if it has lessons, else Fingering in your home folder.")
    Optional<Path> folder = Optional.empty();

    @Mixin OutputFile output = new OutputFile();

    @Override
    public Integer call() {
      output.check();
      LessonFolder lessons = folder.map(LessonFolder::read).orElseGet(Listing::usual);
      output.print(LessonListText.of(lessons.lessons(), Screen.columns(), output.style()), spec);
      lessons
          .problems()
          .forEach(problem -> spec.commandLine().getErr().println(Screen.complaint(problem)));
      return lessons.problems().isEmpty() ? ExitCode.DONE : ExitCode.FINDINGS;
    }

    private static LessonFolder usual() {
      LessonFolder here = LessonFolder.read(Path.of("."));
      Path own = Path.of(System.getProperty("user.home", "."), "Fingering");
      if (!here.lessons().isEmpty() || !here.problems().isEmpty()) {
        return here;
      }
      if (!Files.isDirectory(own)) {
        throw new SelectionException(
            "There are no lessons in this folder, and there is no folder %s: name a folder, or save a lesson with --save-lesson."
                .formatted(own));
      }
      return LessonFolder.read(own);
    }
  }

  /** Shows a lesson. */
  @Command(
      name = "show",
      description = "Shows a lesson, and checks that its score, student and journal are there.",
      footer = {"", "Examples:", "  fingering lesson show docs/examples/imke-mill.yaml"})
  static final class Show extends BaseCommand {
    @Parameters(paramLabel = "LESSON", description = "The file of the lesson.")
    Path file = Path.of("");

    @Mixin OutputFile output = new OutputFile();

    @Override
    public Integer call() {
      output.check();
      StoredLesson lesson = StoredLesson.read(file);
      Optional<Path> student = lesson.studentFile();
      String text =
          LessonFile.text(lesson.lesson())
              + LessonListText.files(lesson, student, Screen.columns());
      output.print(text, spec);
      return ExitCode.DONE;
    }
  }
}
