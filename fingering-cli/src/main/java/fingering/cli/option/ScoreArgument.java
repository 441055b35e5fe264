package fingering.cli.option;

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

/** The score: a file, or a tune typed on the command line; shared by the commands. */
public final class ScoreArgument extends TuneOptions {
  /** What newcomers type for the excerpt that comes with the program. */
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
          "Music typed in ABC notation instead of a file; \\n begins a new line: --abc 'K:G clef=alto\\nD2 GA B4|'.")
  Optional<String> abc = Optional.empty();

  /** Reads the score that is given. */
  public ScoreFile read() {
    file.filter(name -> name.toString().isEmpty())
        .ifPresent(
            name -> {
              throw new ParameterException(
                  command.commandLine(), "the name of the SCORE is empty; name its file");
            });
    if (file.isPresent() && abc.isPresent()) {
      throw new ParameterException(
          command.commandLine(), "a SCORE and --abc are given; leave one of them out");
    }
    if (file.isPresent()) {
      file.filter(name -> name.toString().equals(DEMO) && !Files.exists(name))
          .ifPresent(
              name -> {
                throw new SelectionException(
                    "There is no file demo: the excerpt that comes with the program is"
                        + " docs/demo/demo.musicxml, and 'fingering demo' compares it.");
              });
      return read(file.get());
    }
    return abc.map(typed -> read("--abc", typed.replace("\\n", "\n")))
        .orElseThrow(
            () ->
                new ParameterException(
                    command.commandLine(),
                    "no score is given; name the file of one, such as docs/demo/demo.musicxml, or type"
                        + " music after --abc"));
  }
}
