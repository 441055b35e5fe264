package fingering.cli;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.UnwritableScoreException;
import fingering.plan.InfeasibleBriefException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
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
      "Examples:",
      "  fingering demo",
      "  fingering compare part.musicxml --measures 9-24",
      "  fingering compare quartet.mxl --part Viola --tempo half=84",
      "  fingering plan part.musicxml --choose third --write marked.musicxml",
      "  fingering chart viola --position 3",
      "  fingering scale D major --instrument viola --octaves 3",
      "  fingering audition hearing.yaml --write hearing",
      "  fingering practice part.musicxml --from quarter=60 --to quarter=96 --by 2026-12-12",
      "  fingering journal add --clean quarter=66 --note 'bow quiet at last'",
      "  fingering check orchestra/ --level intermediate",
      "  fingering learn fingered.musicxml --output my.weights",
      "",
      "Exit codes: 0 done; 1 the score or the request cannot be met; 2 the command was mistyped."
    })
public final class Main {
  private static final ImmutableList<Class<?>> COMMANDS =
      ImmutableList.of(
          DemoCommand.class,
          CompareCommand.class,
          PlanCommand.class,
          ChartCommand.class,
          LearnCommand.class,
          ScaleCommand.class,
          AuditionCommand.class,
          PracticeCommand.class,
          JournalCommand.class,
          CheckCommand.class,
          MarksCommand.class);

  private Main() {}

  /** Runs the command and exits with its code. */
  public static void main(String[] arguments) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
    int code = run(out, err, arguments);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /** Runs the command; returns its exit code. */
  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = commandLine(arguments);
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(Main::mistyped);
    line.setExecutionExceptionHandler(
        (exception, command, parsed) -> {
          command.getErr().println("fingering: " + sentence(exception));
          return 1;
        });
    try {
      return line.execute(arguments);
    } catch (OutOfMemoryError e) {
      // Nothing is half done then: files are written beside and moved when they are complete.
      err.println("fingering: " + sentence(e));
      return 1;
    }
  }

  /**
   * The command line that can run the arguments. Where they begin with the name of a command it
   * knows that one alone, since to set up the options of all takes longer than most plans.
   */
  private static CommandLine commandLine(String... arguments) {
    ImmutableList<Class<?>> named =
        COMMANDS.stream()
            .filter(command -> arguments.length > 0 && name(command).equals(arguments[0]))
            .collect(ImmutableList.toImmutableList());
    CommandLine line = new CommandLine(new Main());
    (named.isEmpty() ? COMMANDS : named).forEach(line::addSubcommand);
    return line;
  }

  private static String name(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }

  private static int mistyped(CommandLine.ParameterException exception, String[] arguments) {
    CommandLine command = exception.getCommandLine();
    command
        .getErr()
        .println(
            "fingering: "
                + exception.getMessage()
                + " (see '"
                + command.getCommandSpec().qualifiedName()
                + " --help')");
    return 2;
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
    boolean foreseen =
        exception instanceof UnreadableScoreException
            || exception instanceof UnwritableScoreException
            || exception instanceof InfeasibleBriefException
            || exception instanceof IllegalArgumentException;
    return foreseen
        ? exception.getMessage()
        : "something went wrong that was not foreseen ("
            + exception.getClass().getSimpleName()
            + ": "
            + exception.getMessage()
            + "); please report it with the score that caused it.";
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
