package fingering.cli.option;

import com.google.common.base.Ascii;
import fingering.cli.file.NewFiles;
import fingering.cli.file.OutputPaths;
import fingering.cli.file.WrittenFiles;
import fingering.cli.terminal.Screen;
import fingering.cli.terminal.TextStyle;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** The option {@code --output}, and printing to that file or to the terminal. */
public class OutputFile {
  private static final String NAME = "--output";

  private Optional<Path> output = Optional.empty();

  @Option(
      names = NAME,
      paramLabel = "FILE",
      converter = Converters.OutputConverter.class,
      description = "Print to a new file instead of the terminal.")
  final void output(Optional<Path> file) {
    output = file.filter(name -> !name.toString().equals(Converters.TERMINAL));
  }

  /** The file to print to; empty for the terminal. */
  public final Optional<Path> path() {
    return output;
  }

  /**
   * Checks, before any work is done, that the file can be made.
   *
   * @throws fingering.musicxml.UnwritableScoreException if it exists or its folder does not
   */
  public final void check() {
    output.ifPresent(file -> OutputPaths.requireNew(file, NAME));
  }

  /** The format of the option, else the one that the file name ends in, else the usual one. */
  final <F extends Enum<F>> F format(Optional<F> option, Class<F> formats, F usual) {
    String name = output.map(file -> Ascii.toLowerCase(file.toString())).orElse("");
    return option
        .or(
            () ->
                EnumSet.allOf(formats).stream()
                    .filter(format -> name.endsWith("." + Ascii.toLowerCase(format.name())))
                    .findFirst())
        .orElse(usual);
  }

  /** Whether the output is text for readers, not a format that is always UTF-8. */
  protected boolean isText() {
    return true;
  }

  /** Prints the text to the file or the terminal, and names the file on the error stream. */
  public final void print(String text, CommandSpec command) {
    try (NewFiles files = new NewFiles()) {
      print(text, files, command);
    }
  }

  /**
   * Publishes the new files together with the printed text, and names every file on the error
   * stream.
   */
  public final void print(String text, NewFiles files, CommandSpec command) {
    output.ifPresent(file -> files.text(text, file, NAME));
    files.publish();
    if (output.isEmpty()) {
      PrintWriter terminal = command.commandLine().getOut();
      PrintWriter printer = isText() ? terminal : Screen.exact(terminal);
      printer.print(text);
      printer.flush();
    }
    files.report(command);
  }

  /** Names the file on the error stream, if there is one. */
  public final void report(CommandSpec command) {
    output.ifPresent(file -> WrittenFiles.report(command, file));
  }

  /** The style of the text: coloured only on a terminal with colours, and never with NO_COLOR. */
  public final TextStyle style() {
    return TextStyle.of(
        output.isEmpty()
            && CommandLine.Help.Ansi.AUTO.enabled()
            && !"dumb".equals(System.getenv("TERM")));
  }
}
