package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.command.Commands;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** docs/command-line.md lists every option of every command, and no others. */
class OptionsPageTest {
  private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]*");

  /** Options of every command, which the page leaves out. */
  private static final Set<String> EVERYWHERE = Set.of("--help", "--version");

  private static Set<String> options(CommandLine command) {
    Set<String> options = new TreeSet<>();
    command.getCommandSpec().options().forEach(option -> options.add(option.longestName()));
    command.getSubcommands().values().forEach(each -> options.addAll(options(each)));
    options.removeAll(EVERYWHERE);
    return options;
  }

  @Test
  void pageListsEveryOptionAndNoOther() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "command-line.md"));

    Set<String> named =
        OPTION
            .matcher(page)
            .results()
            .map(match -> match.group())
            .filter(option -> !EVERYWHERE.contains(option))
            .collect(Collectors.toCollection(TreeSet::new));

    assertThat(named).containsExactlyInAnyOrderElementsOf(options(Commands.all()));
  }
}
