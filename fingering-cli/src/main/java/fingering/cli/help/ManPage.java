package fingering.cli.help;

import fingering.cli.terminal.Screen;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page of a command, in troff with the macros of manual pages. */
public final class ManPage {
  private final CommandSpec spec;
  private final StringBuilder page = new StringBuilder();

  private ManPage(CommandSpec spec) {
    this.spec = spec;
  }

  /** The page. */
  public static String of(CommandSpec spec) {
    ManPage page = new ManPage(spec);
    page.write();
    return page.page.toString();
  }

  private static String name(CommandSpec spec) {
    return spec.qualifiedName("-");
  }

  private void write() {
    String described = String.join(" ", spec.usageMessage().description());
    macro("TH", name(spec).toUpperCase(Locale.ROOT), "1", "", ProgramVersion.number(), "Fingering");
    macro("SH", "NAME");
    text(name(spec) + " - " + described.replaceFirst("\\.$", ""));
    macro("SH", "SYNOPSIS");
    text(TeachingHelp.synopsis(spec));
    macro("SH", "DESCRIPTION");
    text(described);
    List<String> footer = List.of(spec.usageMessage().footer());
    int examples = (int) footer.stream().takeWhile(line -> !line.startsWith("Example")).count();
    macro("PP");
    text(String.join(" ", footer.subList(0, examples)).strip());
    commands();
    options();
    if (examples < footer.size()) {
      macro("SH", "EXAMPLES");
      // Lines to be typed are as wide as a terminal: they begin further to the left.
      page.append(".nf\n.in 2n\n");
      footer.subList(examples + 1, footer.size()).stream()
          .map(line -> line.startsWith("  ") ? line.substring(2) : line)
          .forEach(this::text);
      page.append(".in\n");
      macro("fi");
    }
    macro("SH", "EXIT STATUS");
    TeachingHelp.exitCodes(spec).forEach(this::entry);
    macro("SH", "ENVIRONMENT");
    entry("NO_COLOR", "Set to anything, it keeps colours away.");
    entry("COLUMNS", "How wide text is printed, 60 to 200; as the terminal otherwise.");
    entry(Screen.VARIABLE, "The character set of text, such as ASCII; as the terminal otherwise.");
  }

  private void commands() {
    if (spec.subcommands().isEmpty()) {
      return;
    }
    macro("SH", "COMMANDS");
    spec.subcommands().values().stream()
        .map(CommandLine::getCommandSpec)
        .forEach(each -> entry(each.name(), String.join(" ", each.usageMessage().description())));
  }

  private void options() {
    macro("SH", "OPTIONS");
    spec.positionalParameters()
        .forEach(each -> entry(TeachingHelp.label(each), String.join(" ", each.description())));
    TeachingHelp.sections(spec)
        .forEach(
            (heading, options) -> {
              macro("SS", heading);
              options.forEach(this::entry);
            });
  }

  private void entry(OptionSpec option) {
    entry(TeachingHelp.names(option), String.join(" ", option.description()));
  }

  private void entry(String name, String says) {
    macro("TP");
    page.append("\\fB").append(escaped(name)).append("\\fR\n");
    text(says);
  }

  private void macro(String name, String... words) {
    page.append('.').append(name);
    Stream.of(words).forEach(word -> page.append(" \"").append(escaped(word)).append('"'));
    page.append('\n');
  }

  /** A line of text; a point or a stroke at its beginning is none of a macro. */
  private void text(String line) {
    page.append(line.startsWith(".") || line.startsWith("'") ? "\\&" : "")
        .append(escaped(line))
        .append('\n');
  }

  /** Backslashes, hyphens that are to be copied, and characters beyond ASCII. */
  private static String escaped(String text) {
    return text.codePoints()
        .mapToObj(
            each ->
                each == '\\'
                    ? "\\e"
                    : each == '-'
                        ? "\\-"
                        : each == '\''
                            ? "\\(aq"
                            : each < 127
                                ? Character.toString(each)
                                : String.format(Locale.ROOT, "\\[u%04X]", each))
        .collect(Collectors.joining());
  }
}
