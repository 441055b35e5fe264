package fingering.cli.help;

import com.google.common.collect.ImmutableMap;
import fingering.cli.lesson.LessonOption;
import fingering.cli.lesson.LessonsOption;
import fingering.cli.lesson.SaveLessonOption;
import fingering.cli.option.CheckOptions;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.DetailOptions;
import fingering.cli.option.HandOptions;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.LimitOptions;
import fingering.cli.option.PartOptions;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.option.TuneOptions;
import fingering.cli.option.WeightsOptions;
import fingering.cli.output.AuditionOutput;
import fingering.cli.output.ChartOutput;
import fingering.cli.output.CheckOutput;
import fingering.cli.output.HandoutOutput;
import fingering.cli.output.OutputFile;
import fingering.cli.output.OutputOptions;
import fingering.cli.output.PracticeOutput;
import fingering.cli.terminal.TextLayout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The help of a command: its purpose, its options in sections, examples, and the exit codes. */
public final class CommandHelp extends Help {
  private static final String MUSIC = "The music";
  private static final String INSTRUMENT = "Instrument and hand";
  private static final String PLAYER = "The player and the costs";
  private static final String LESSON = "The lesson";
  private static final String OUTPUT = "Output";
  private static final String HELP = "Help";

  /** Headings by the class that declares the options. All other options are the command's own. */
  private static final ImmutableMap<Class<?>, String> HEADINGS =
      ImmutableMap.<Class<?>, String>builder()
          .put(ScoreArgument.class, MUSIC)
          .put(TuneOptions.class, MUSIC)
          .put(LimitOptions.class, MUSIC)
          .put(ScoreOptions.class, MUSIC)
          .put(PartOptions.class, MUSIC)
          .put(CheckOptions.class, MUSIC)
          .put(InstrumentOptions.class, INSTRUMENT)
          .put(HandOptions.class, INSTRUMENT)
          .put(PlayerOptions.class, PLAYER)
          .put(WeightsOptions.class, PLAYER)
          .put(DemandOptions.class, "What the plan must do")
          .put(LessonOption.class, LESSON)
          .put(LessonsOption.class, LESSON)
          .put(SaveLessonOption.class, LESSON)
          .put(OutputOptions.class, OUTPUT)
          .put(DetailOptions.class, OUTPUT)
          .put(OutputFile.class, OUTPUT)
          .put(AuditionOutput.class, OUTPUT)
          .put(ChartOutput.class, OUTPUT)
          .put(CheckOutput.class, OUTPUT)
          .put(PracticeOutput.class, OUTPUT)
          .put(HandoutOutput.class, OUTPUT)
          .buildOrThrow();

  /** The fewest options that are printed in sections. */
  private static final int MIN_FOR_SECTIONS = 9;

  private static final int COLUMNS = 80;

  /** Width of the column of names. */
  private static final int NAMES = 28;

  private final CommandSpec spec;

  private CommandHelp(CommandSpec spec, ColorScheme colours) {
    super(spec, colours);
    this.spec = spec;
  }

  /** The help of a command. */
  public static Help of(CommandSpec spec, ColorScheme colours) {
    spec.usageMessage().commandListHeading("%nCommands:%n");
    return new CommandHelp(spec, colours);
  }

  @Override
  public String synopsis(int headingLength) {
    return synopsis(spec) + "\n\n";
  }

  /** The command with its required arguments, then its optional ones. */
  static String synopsis(CommandSpec spec) {
    StringBuilder line = new StringBuilder(spec.qualifiedName());
    if (!spec.subcommands().isEmpty()) {
      line.append(" COMMAND");
    }
    spec.positionalParameters().forEach(each -> line.append(' ').append(label(each)));
    spec.options().stream()
        .filter(OptionSpec::required)
        .forEach(each -> line.append(' ').append(names(each)));
    return line.append(" [OPTIONS]").toString();
  }

  /** The label of a positional parameter, with dots if it may be repeated. */
  static String label(PositionalParamSpec parameter) {
    return parameter.paramLabel() + (parameter.arity().max() > 1 ? "..." : "");
  }

  static String names(OptionSpec option) {
    return String.join(", ", option.names())
        + (option.arity().max() > 0 ? " " + option.paramLabel() : "");
  }

  @Override
  public String parameterList() {
    StringBuilder text = new StringBuilder();
    spec.positionalParameters()
        .forEach(each -> text.append(entry("  " + label(each), NAMES, each.description())));
    return text.length() == 0 ? "" : "\n" + text;
  }

  @Override
  public String optionList() {
    if (spec.options().size() < MIN_FOR_SECTIONS) {
      return "\n" + list(spec.options());
    }
    StringBuilder text = new StringBuilder();
    sections(spec)
        .forEach(
            (heading, options) ->
                text.append('\n')
                    .append(colorScheme().ansi().string("@|bold " + heading + "|@"))
                    .append('\n')
                    .append(list(options)));
    return text.toString();
  }

  private static String list(List<OptionSpec> options) {
    StringBuilder text = new StringBuilder();
    options.forEach(
        each -> {
          String names = names(each);
          text.append(
              entry((names.startsWith("--") ? "      " : "  ") + names, NAMES, each.description()));
        });
    return text.toString();
  }

  /** A name, with its description beside or below it. */
  private static String entry(String name, int width, String... description) {
    String margin = " ".repeat(width);
    String text =
        String.join(
            "\n" + margin, TextLayout.wrap(String.join(" ", description), COLUMNS - width, 0));
    boolean beside = name.length() < width;
    return (beside ? TextLayout.pad(name, width) : name + "\n" + margin) + text + "\n";
  }

  /** Empty: the footer has the exit codes. */
  @Override
  public String exitCodeList() {
    return "";
  }

  /** The command's own options first, help last. */
  static Map<String, List<OptionSpec>> sections(CommandSpec spec) {
    Map<String, String> headings = new HashMap<>();
    spec.mixins().values().forEach(mixin -> addHeadings(mixin, headings));
    Map<String, List<OptionSpec>> sections = new LinkedHashMap<>();
    String own = "Options of '" + spec.name() + "'";
    sections.put(own, new ArrayList<>());
    sections.put(MUSIC, new ArrayList<>());
    for (OptionSpec option : spec.options()) {
      String heading =
          option.usageHelp() || option.versionHelp()
              ? HELP
              : headings.getOrDefault(option.longestName(), own);
      sections.computeIfAbsent(heading, each -> new ArrayList<>()).add(option);
    }
    sections.values().removeIf(List::isEmpty);
    List<OptionSpec> help = sections.remove(HELP);
    if (help != null) {
      sections.put(HELP, help);
    }
    return sections;
  }

  /** Inner mixins come first, because their options are also options of the outer mixin. */
  private static void addHeadings(CommandSpec mixin, Map<String, String> headings) {
    mixin.mixins().values().forEach(inner -> addHeadings(inner, headings));
    String heading = HEADINGS.get(mixin.userObject().getClass());
    if (heading != null) {
      mixin.options().forEach(option -> headings.putIfAbsent(option.longestName(), heading));
    }
  }

  @Override
  public String footer(Object... values) {
    StringBuilder text = new StringBuilder(super.footer(values)).append("\nExit codes:\n");
    exitCodes(spec).forEach((code, meaning) -> text.append(entry("  " + code, 5, meaning)));
    return text.toString();
  }

  /** The meaning of each exit code of a command. */
  static ImmutableMap<String, String> exitCodes(CommandSpec spec) {
    ImmutableMap.Builder<String, String> codes = ImmutableMap.builder();
    codes.put("0", "done");
    spec.usageMessage().exitCodeList().forEach((code, meaning) -> codes.put(code.strip(), meaning));
    return codes
        .put("2", "the command line or a file cannot be used; nothing is written")
        .put("3", "the program failed")
        .buildOrThrow();
  }
}
