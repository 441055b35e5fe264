package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.help.ProgramVersion;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command {@code fingering} and its subcommands. */
@Command(
    name = "fingering",
    description = "Plans left-hand fingerings for a string part and explains them.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Each command has its own help: 'fingering plan --help'. SCORE is the name of a",
      "music file: MusicXML (.musicxml, .xml, .mxl) or ABC notation (.abc).",
      "",
      "Examples:",
      "  fingering demo",
      "  fingering compare docs/demo/demo.musicxml --measures 1-16",
      "  fingering plan docs/demo/demo.musicxml --choose third --write marked.musicxml",
      "  fingering chart viola --position 3"
    })
public final class Commands {
  /** The classes of the subcommands, in the order of the help. */
  public static final ImmutableList<Class<?>> ALL =
      ImmutableList.of(
          OpenCommand.class,
          DemoCommand.class,
          CompareCommand.class,
          PlanCommand.class,
          MarksCommand.class,
          PracticeCommand.class,
          JournalCommand.class,
          HandoutCommand.class,
          LessonCommand.class,
          ScaleCommand.class,
          AuditionCommand.class,
          ChartCommand.class,
          CheckCommand.class,
          LearnCommand.class,
          CompletionCommand.class,
          ManCommand.class);

  private Commands() {}

  /**
   * A command line that can run the arguments. If the first one names a command, it has only that
   * command: setting up the options of all commands takes longer than most plans.
   */
  public static CommandLine commandLine(String... arguments) {
    ImmutableList<Class<?>> named =
        ALL.stream()
            .filter(command -> arguments.length > 0 && name(command).equalsIgnoreCase(arguments[0]))
            .collect(ImmutableList.toImmutableList());
    CommandLine line = new CommandLine(new Commands());
    line.setSubcommandsCaseInsensitive(true);
    (named.isEmpty() ? ALL : named).forEach(line::addSubcommand);
    return line;
  }

  /** The command line with all commands. */
  public static CommandLine all() {
    return commandLine();
  }

  private static String name(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }
}
