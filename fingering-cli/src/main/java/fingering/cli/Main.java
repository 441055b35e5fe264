package fingering.cli;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.ChoiceException;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.UnwritableScoreException;
import fingering.plan.InfeasibleBriefException;
import java.io.OutputStream;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command {@code fingering}. */
@Command(
    name = "fingering",
    description = "Plans left-hand fingerings for a string part, and explains them.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    footer = {
      "",
      "Every command has its own help: 'fingering plan --help'. SCORE is the name of a",
      "file with music: MusicXML (.musicxml, .xml, .mxl), or ABC notation (.abc).",
      "",
      "Examples:",
      "  fingering demo",
      "  fingering compare docs/demo/demo.musicxml --measures 1-16",
      "  fingering plan docs/demo/demo.musicxml --choose third --write marked.musicxml",
      "  fingering chart viola --position 3"
    })
public final class Main {
  private static final ImmutableList<Class<?>> COMMANDS =
      ImmutableList.of(
          DemoCommand.class,
          CompareCommand.class,
          PlanCommand.class,
          MarksCommand.class,
          PracticeCommand.class,
          JournalCommand.class,
          ScaleCommand.class,
          AuditionCommand.class,
          ChartCommand.class,
          CheckCommand.class,
          LearnCommand.class,
          CompletionCommand.class,
          ManCommand.class);

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
    } catch (ChoiceException e) {
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
  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = commandLine(arguments);
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setHelpFactory(TeachingHelp::of);
    line.setParameterExceptionHandler(Main::mistyped);
    line.setExecutionExceptionHandler(
        (exception, command, parsed) -> {
          command.getErr().println("fingering: " + sentence(exception));
          return foreseen(exception) ? ExitCode.REFUSED : ExitCode.FAULT;
        });
    try {
      return line.execute(arguments);
    } catch (OutOfMemoryError e) {
      // Nothing is half done then: files are written beside and moved when they are complete.
      err.println("fingering: " + sentence(e));
      return ExitCode.REFUSED;
    }
  }

  /**
   * The command line that can run the arguments. Where they begin with the name of a command it
   * knows that one alone, since to set up the options of all takes longer than most plans.
   */
  private static CommandLine commandLine(String... arguments) {
    ImmutableList<Class<?>> named =
        COMMANDS.stream()
            .filter(command -> arguments.length > 0 && name(command).equalsIgnoreCase(arguments[0]))
            .collect(ImmutableList.toImmutableList());
    CommandLine line = new CommandLine(new Main());
    line.setSubcommandsCaseInsensitive(true);
    (named.isEmpty() ? COMMANDS : named).forEach(line::addSubcommand);
    return line;
  }

  /** The command line with all of its commands. */
  static CommandLine whole() {
    return commandLine();
  }

  private static String name(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }

  private static int mistyped(CommandLine.ParameterException exception, String[] arguments) {
    exception
        .getCommandLine()
        .getErr()
        .println("fingering: " + Mistyped.sentence(exception, COMMANDS));
    return ExitCode.REFUSED;
  }

  /** One sentence for whatever went wrong; what was not foreseen says so. */
  static String sentence(Throwable exception) {
    if (exception instanceof OutOfMemoryError) {
      return "This takes more memory than Java may use here: split the score, ask for fewer"
          + " measures, or set JAVA_TOOL_OPTIONS=-Xmx8g.";
    }
    if (exception instanceof StackOverflowError) {
      return "This goes deeper than Java may go here: check that the file is a score, or set"
          + " JAVA_TOOL_OPTIONS=-Xss16m.";
    }
    return foreseen(exception)
        ? exception.getMessage().replaceFirst("(?<=[^.])$", ".")
        : "something went wrong that was not foreseen ("
            + exception.getClass().getSimpleName()
            + ": "
            + exception.getMessage()
            + "); please report it with the score that caused it.";
  }

  /**
   * Whether what went wrong lies with what was typed or read, or with the means of the computer.
   */
  private static boolean foreseen(Throwable exception) {
    return exception instanceof UnreadableScoreException
        || exception instanceof UnwritableScoreException
        || exception instanceof InfeasibleBriefException
        || exception instanceof IllegalArgumentException
        || exception instanceof StackOverflowError;
  }

  /** The version of the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"fingering " + number()};
    }

    static String number() {
      String version = Main.class.getPackage().getImplementationVersion();
      return version == null ? "(development)" : version;
    }
  }
}
