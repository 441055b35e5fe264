package fingering.cli.command;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.cli.help.ProgramVersion;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
  /**
   * The classes of the subcommands by their names, in the order of the help. The names are here too
   * because reading the annotations of all commands takes longer than most plans.
   */
  private static final ImmutableMap<String, Class<?>> BY_NAME =
      ImmutableMap.<String, Class<?>>builder()
          .put("open", OpenCommand.class)
          .put("demo", DemoCommand.class)
          .put("compare", CompareCommand.class)
          .put("plan", PlanCommand.class)
          .put("marks", MarksCommand.class)
          .put("practice", PracticeCommand.class)
          .put("journal", JournalCommand.class)
          .put("handout", HandoutCommand.class)
          .put("lesson", LessonCommand.class)
          .put("scale", ScaleCommand.class)
          .put("audition", AuditionCommand.class)
          .put("chart", ChartCommand.class)
          .put("check", CheckCommand.class)
          .put("learn", LearnCommand.class)
          .put("completion", CompletionCommand.class)
          .put("man", ManCommand.class)
          .buildOrThrow();

  /** The classes of the subcommands, in the order of the help. */
  public static final ImmutableList<Class<?>> ALL = BY_NAME.values().asList();

  private static final ImmutableSet<String> READING =
      ImmutableSet.of("demo", "compare", "plan", "marks", "practice", "handout", "check", "learn");

  private Commands() {}

  /**
   * A command line that can run the arguments. If the first one names a command, it has only that
   * command: setting up the options of all commands takes longer than most plans.
   */
  public static CommandLine commandLine(String... arguments) {
    Optional<Class<?>> named =
        first(arguments).flatMap(name -> Optional.ofNullable(BY_NAME.get(name)));
    CommandLine line = new CommandLine(new Commands());
    line.setSubcommandsCaseInsensitive(true);
    named.map(List::<Class<?>>of).orElse(ALL).forEach(line::addSubcommand);
    return line;
  }

  /** The command line with all commands. */
  public static CommandLine all() {
    return commandLine();
  }

  /** Whether the arguments name a command that reads scores. */
  public static boolean readsScores(String... arguments) {
    return first(arguments).filter(READING::contains).isPresent();
  }

  private static Optional<String> first(String... arguments) {
    return Stream.of(arguments).findFirst().map(Ascii::toLowerCase);
  }
}
