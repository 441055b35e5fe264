package fingering.cli;

import fingering.cli.command.Commands;
import fingering.cli.command.ExitCode;
import fingering.cli.help.CommandHelp;
import fingering.cli.help.ErrorMessage;
import fingering.cli.help.UsageError;
import fingering.cli.option.Converters;
import fingering.cli.terminal.PrintingStoppedException;
import fingering.cli.terminal.Screen;
import fingering.files.FileProblem;
import fingering.musicxml.SelectionException;
import fingering.musicxml.reading.ScoreReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The entry point of the program: runs a command and exits with its code. */
public final class Main {
  private Main() {}

  /** Runs the command, or opens the page for a double click, and exits with its code. */
  public static void main(String[] arguments) {
    String[] command = DesktopStart.command(arguments);
    if (Commands.readsScores(command)) {
      prepareReading();
    }
    System.exit(run(command));
  }

  /** Reading takes half of the time of a short command; another thread does part of it. */
  private static void prepareReading() {
    Thread thread = new Thread(ScoreReader::prepare, "preparing");
    thread.setDaemon(true);
    // What fails here fails again in reading, where it is reported.
    thread.setUncaughtExceptionHandler((failed, error) -> {});
    thread.start();
  }

  private static int run(String... arguments) {
    Screen out;
    Screen err;
    try {
      out = screen(new FileOutputStream(FileDescriptor.out), "stdout");
      err = screen(System.err, "stderr");
    } catch (SelectionException e) {
      System.err.println(Screen.complaint(String.valueOf(e.getMessage())));
      return ExitCode.REFUSED;
    }
    int code = run(out, err, arguments);
    err.flush();
    return code;
  }

  private static Screen screen(OutputStream stream, String name) {
    return Screen.of(
        stream,
        Screen.charset(System.getenv(), property -> System.getProperty(property, ""), name));
  }

  /** Runs the command, and checks that its output was printed; returns the exit code. */
  public static int run(PrintWriter out, PrintWriter err, String... arguments) {
    int code = execute(out, err, arguments);
    Optional<IOException> failure = Screen.failure(out);
    if (failure.isEmpty() || FileProblem.readerHasEnded(failure.get())) {
      return code;
    }
    err.println(Screen.complaint(FileProblem.printing(failure.get())));
    return ExitCode.REFUSED;
  }

  private static int execute(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = Commands.commandLine(arguments);
    line.setOut(out);
    line.setErr(err);
    line.registerConverter(Path.class, new Converters.FileConverter());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setHelpFactory(CommandHelp::of);
    line.setExecutionStrategy(Main::execute);
    line.setParameterExceptionHandler(
        (exception, typed) -> {
          exception
              .getCommandLine()
              .getErr()
              .println(Screen.complaint(UsageError.sentence(exception, Commands.ALL)));
          return ExitCode.REFUSED;
        });
    line.setExecutionExceptionHandler(
        (exception, command, parsed) -> {
          if (!(exception instanceof PrintingStoppedException)) {
            command.getErr().println(Screen.complaint(ErrorMessage.sentence(exception)));
          }
          return ErrorMessage.isExpected(exception) ? ExitCode.REFUSED : ExitCode.FAILED;
        });
    try {
      return line.execute(arguments);
    } catch (OutOfMemoryError e) {
      // No file is left half written: each is moved into place when it is complete.
      err.println(Screen.complaint(ErrorMessage.sentence(e)));
      return ExitCode.REFUSED;
    }
  }

  /** Runs the command. An unknown command is an error even if its help is requested. */
  private static int execute(ParseResult parsed) {
    ParseResult last = parsed;
    while (last.hasSubcommand()) {
      last = last.subcommand();
    }
    if (!last.unmatched().isEmpty() && !last.commandSpec().subcommands().isEmpty()) {
      throw new UnmatchedArgumentException(last.commandSpec().commandLine(), last.unmatched());
    }
    return new CommandLine.RunLast().execute(parsed);
  }
}
