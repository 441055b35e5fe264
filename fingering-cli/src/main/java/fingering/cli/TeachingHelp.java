package fingering.cli;

import com.google.common.collect.ImmutableMap;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * The help of a command: what it is for, its options in sections, examples, and the exit codes. It
 * is put together only when somebody asks for it.
 */
final class TeachingHelp extends Help {
  private static final String MUSIC = "The music";
  private static final String INSTRUMENT = "Instrument and hand";
  private static final String OUTPUT = "Where and how to print";
  private static final String HELP = "Help";

  /** Headings by the class that declares the options; all others are the command's own. */
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
          .put(PlayerOptions.class, "Student, and what the rules charge")
          .put(WeightsOptions.class, "Student, and what the rules charge")
          .put(DemandOptions.class, "What a plan must keep, avoid and show")
          .put(OutputOptions.class, OUTPUT)
          .put(OutputFile.class, OUTPUT)
          .put(ChartOutput.class, OUTPUT)
          .put(PracticeOutput.class, OUTPUT)
          .buildOrThrow();

  /** From here on sections are worth their headings. */
  private static final int LONG = 9;

  private final CommandSpec spec;

  private TeachingHelp(CommandSpec spec, ColorScheme colours) {
    super(spec, colours);
    this.spec = spec;
  }

  /** The help of a command. */
  static Help of(CommandSpec spec, ColorScheme colours) {
    // Everything was read by now; in words an option and its value stand apart.
    spec.parser().separator(" ");
    spec.usageMessage().abbreviateSynopsis(true);
    return new TeachingHelp(spec, colours);
  }

  @Override
  public String optionList() {
    List<OptionSpec> all = spec.options();
    if (all.size() < LONG) {
      return list(all);
    }
    StringBuilder text = new StringBuilder();
    sections()
        .forEach(
            (heading, options) ->
                text.append(System.lineSeparator())
                    .append(colorScheme().ansi().string("@|bold " + heading + "|@"))
                    .append(System.lineSeparator())
                    .append(list(options)));
    return text.toString();
  }

  private String list(List<OptionSpec> options) {
    return optionListExcludingGroups(
        options, createDefaultLayout(), null, parameterLabelRenderer());
  }

  /** The command's own options first, help last. */
  private Map<String, List<OptionSpec>> sections() {
    Map<String, String> headings = new HashMap<>();
    spec.mixins().values().forEach(mixin -> name(mixin, headings));
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
    List<OptionSpec> last = sections.remove(HELP);
    sections.put(HELP, last);
    return sections;
  }

  /** Mixins within a mixin come first: their options are also options of that. */
  private static void name(CommandSpec mixin, Map<String, String> headings) {
    mixin.mixins().values().forEach(inner -> name(inner, headings));
    String heading = HEADINGS.get(mixin.userObject().getClass());
    if (heading != null) {
      mixin.options().forEach(option -> headings.putIfAbsent(option.longestName(), heading));
    }
  }

  @Override
  public String footer(Object... values) {
    StringBuilder text = new StringBuilder(super.footer(values));
    text.append(System.lineSeparator())
        .append("Exit codes:")
        .append(System.lineSeparator())
        .append("  0  done")
        .append(System.lineSeparator());
    spec.usageMessage().exitCodeList().forEach((code, says) -> text.append(code(code, says)));
    return text.append(code("2", "what was typed, or a file, cannot be used; nothing is written"))
        .append(code("3", "the program itself failed"))
        .toString();
  }

  private static String code(String code, String says) {
    return "  " + code.strip() + "  " + says + System.lineSeparator();
  }
}
