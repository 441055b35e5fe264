package fingering.cli.help;

import fingering.cli.terminal.Screen;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page of a command, in troff with the man macros. */
public final class ManPage {
  private final CommandSpec spec;
  private final StringBuilder page = new StringBuilder();

  private ManPage(CommandSpec spec) {
    this.spec = spec;
  }

  /** The manual page. */
  public static String of(CommandSpec spec) {
    ManPage page = new ManPage(spec);
    page.write();
    return page.page.toString();
  }

  private static String name(CommandSpec spec) {
    return spec.qualifiedName("-");
  }

  private void write() {
    String description = String.join(" ", spec.usageMessage().description());
    macro("TH", name(spec).toUpperCase(Locale.ROOT), "1", "", ProgramVersion.number(), "Fingering");
    macro("SH", "NAME");
    text(name(spec) + " - " + description.replaceFirst("\\.$", ""));
    macro("SH", "SYNOPSIS");
    text(CommandHelp.synopsis(spec));
    macro("SH", "DESCRIPTION");
    text(description);
    List<String> footer = List.of(spec.usageMessage().footer());
    int examples = (int) footer.stream().takeWhile(line -> !line.startsWith("Example")).count();
    macro("PP");
    text(String.join(" ", footer.subList(0, examples)).strip());
    commands();
    options();
    if (examples < footer.size()) {
      macro("SH", "EXAMPLES");
      // Examples are as wide as a terminal, so they need a smaller indent.
      page.append(".nf\n.in 2n\n");
      footer.subList(examples + 1, footer.size()).stream()
          .map(line -> line.startsWith("  ") ? line.substring(2) : line)
          .forEach(this::text);
      page.append(".in\n");
      macro("fi");
    }
    macro("SH", "EXIT STATUS");
    CommandHelp.exitCodes(spec).forEach(this::entry);
    macro("SH", "ENVIRONMENT");
    entry("NO_COLOR", "Set to any value: no colours.");
    entry("COLUMNS", "Width of text, 60 to 200. Default: the width of the terminal, or 80.");
    entry(Screen.VARIABLE, "Character set of text, such as ASCII. Default: that of the terminal.");
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
        .forEach(each -> entry(CommandHelp.label(each), String.join(" ", each.description())));
    CommandHelp.sections(spec)
        .forEach(
            (heading, options) -> {
              macro("SS", heading);
              options.forEach(this::entry);
            });
  }

  private void entry(OptionSpec option) {
    entry(CommandHelp.names(option), String.join(" ", option.description()));
  }

  private void entry(String name, String description) {
    macro("TP");
    page.append("\\fB").append(escaped(name)).append("\\fR\n");
    text(description);
  }

  private void macro(String name, String... words) {
    page.append('.').append(name);
    Stream.of(words).forEach(word -> page.append(" \"").append(escaped(word)).append('"'));
    page.append('\n');
  }

  /** A line of text. A full stop or an apostrophe at its start is escaped: it is not a macro. */
  private void text(String line) {
    page.append(line.startsWith(".") || line.startsWith("'") ? "\\&" : "")
        .append(escaped(line))
        .append('\n');
  }

  /** Escapes backslashes, hyphens (so that they can be copied) and non-ASCII characters. */
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
