package fingering.cli.output;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.FileForm;
import fingering.cli.file.NewFiles;
import fingering.cli.file.OutputPaths;
import fingering.cli.file.WrittenFiles;
import fingering.cli.option.Converters;
import fingering.cli.terminal.Screen;
import fingering.cli.terminal.TextStyle;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option {@code --output}, and printing to that file or to the terminal. */
public class OutputFile {
  private static final String NAME = "--output";

  /** The forms of a file of settings, such as weights: YAML, which is text too. */
  private static final ImmutableList<FileForm> SETTINGS =
      ImmutableList.of(FileForm.YAML, FileForm.TEXT);

  @Spec(Spec.Target.MIXEE)
  CommandSpec command;

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
   * @throws ParameterException if its name promises a form that the command does not make
   * @throws fingering.musicxml.UnwritableScoreException if it exists or its folder does not
   */
  public final void check() {
    form();
    output.ifPresent(file -> OutputPaths.requireNew(file, NAME));
  }

  /** The same for a command that now prints a file of settings, which is YAML. */
  public final void checkSettings() {
    form(Optional.empty(), SETTINGS);
    output.ifPresent(file -> OutputPaths.requireNew(file, NAME));
  }

  /**
   * The form to print: that of the option {@code --format}, else that of the name, else text.
   * Without that option, the command makes text or a file of settings, which is text too.
   *
   * @throws ParameterException if the name promises another form
   */
  protected FileForm form() {
    return form(Optional.empty(), SETTINGS);
  }

  /** The same for a command whose option takes the names of these constants. */
  final <F extends Enum<F>> FileForm form(Optional<F> option, Class<F> formats) {
    return form(
        option.map(OutputFile::form),
        Stream.of(formats.getEnumConstants())
            .map(OutputFile::form)
            .collect(ImmutableList.toImmutableList()));
  }

  private static FileForm form(Enum<?> format) {
    return FileForm.valueOf(format.name());
  }

  private FileForm form(Optional<FileForm> option, ImmutableList<FileForm> made) {
    Optional<FileForm> promised = output.flatMap(FileForm::of);
    promised
        .filter(form -> !made.contains(form))
        .ifPresent(
            form -> {
              throw new ParameterException(command.commandLine(), notMade(form, made));
            });
    promised
        .filter(form -> option.isPresent() && !option.get().equals(form))
        .ifPresent(
            form -> {
              throw new ParameterException(
                  command.commandLine(),
                  "--format %s does not fit the name %s; end it in %s, or leave out --format"
                      .formatted(
                          option.get().words(), output.orElseThrow(), option.get().ending()));
            });
    return option.or(() -> promised).orElse(FileForm.TEXT);
  }

  private String notMade(FileForm form, ImmutableList<FileForm> made) {
    String name = command.qualifiedName().substring(command.root().name().length()).strip();
    String instead =
        command.optionsMap().containsKey(form.option())
            ? "use %s for that, or end the name in".formatted(form.option())
            : "end the name in";
    return "'%s' makes %s, not %s; %s %s"
        .formatted(
            name,
            list(made.stream().map(FileForm::words).toList(), "and"),
            form.words(),
            instead,
            list(made.stream().map(FileForm::ending).toList(), "or"));
  }

  private static String list(List<String> words, String last) {
    int end = words.size() - 1;
    return end < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, end)) + " " + last + " " + words.get(end);
  }

  /** Whether the output is text for readers, not a format that is always UTF-8. */
  private boolean isText() {
    FileForm form = form();
    return form == FileForm.TEXT || form == FileForm.YAML;
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
