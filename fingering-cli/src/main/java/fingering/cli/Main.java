package fingering.cli;

import fingering.cli.command.Commands;
import fingering.cli.help.ErrorMessage;
import fingering.cli.help.TeachingHelp;
import fingering.cli.help.UsageError;
import fingering.cli.terminal.ExitCode;
import fingering.cli.terminal.Screen;
import fingering.musicxml.SelectionException;
import java.io.OutputStream;
import java.io.PrintWriter;
import picocli.CommandLine;

/** The entry of the program: runs a command and ends with its exit code. */
public final class Main {
  private Main() {}

  /** Runs the command and exits with its code. */
  public static void main(String[] arguments) {
    System.exit(run(arguments));
  }

  private static int run(String... arguments) {
    Screen out;
    Screen err;
    try {
      out = screen(System.out, "stdout");
      err = screen(System.err, "stderr");
    } catch (SelectionException e) {
      System.err.println("fingering: " + e.getMessage());
      return ExitCode.REFUSED;
    }
    int code = run(out, err, arguments);
    out.flush();
    err.flush();
    return code;
  }

  private static Screen screen(OutputStream stream, String name) {
    return Screen.of(
        stream,
        Screen.charset(System.getenv(), property -> System.getProperty(property, ""), name));
  }

  /** Runs the command; returns its exit code. */
  public static int run(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = Commands.commandLine(arguments);
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setHelpFactory(TeachingHelp::of);
    line.setParameterExceptionHandler(Main::mistyped);
    line.setExecutionExceptionHandler(
        (exception, command, parsed) -> {
          command.getErr().println("fingering: " + ErrorMessage.sentence(exception));
          return ErrorMessage.foreseen(exception) ? ExitCode.REFUSED : ExitCode.FAULT;
        });
    try {
      return line.execute(arguments);
    } catch (OutOfMemoryError e) {
      // Nothing is half done then: files are written beside and moved when they are complete.
      err.println("fingering: " + ErrorMessage.sentence(e));
      return ExitCode.REFUSED;
    }
  }

  private static int mistyped(CommandLine.ParameterException exception, String[] arguments) {
    exception
        .getCommandLine()
        .getErr()
        .println("fingering: " + UsageError.sentence(exception, Commands.ALL));
    return ExitCode.REFUSED;
  }
}
