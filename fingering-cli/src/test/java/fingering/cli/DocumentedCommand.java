package fingering.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A command on a page of the handbook, with the output that the page shows.
 *
 * @param command the command as typed, without the folder of the launcher
 * @param printed the lines below it, up to the next command or the end of the block
 */
record DocumentedCommand(String command, List<String> printed) {
  static final Path ROOT = Path.of("..");
  static final Path DOCS = ROOT.resolve("docs");

  /** The line on a page that stands for omitted output. */
  static final String OMITTED = "…";

  private static final String INDENT = "    ";
  private static final String FENCE = "```";
  private static final Pattern COMMAND =
      Pattern.compile("\\s*(?:fingering-cli/bin/)?(fingering [a-z].*|echo .*|sed -i .*)");

  /** README.md and every page below docs. */
  static List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.walk(DOCS)) {
      return Stream.concat(Stream.of(ROOT.resolve("README.md")), files)
          .filter(file -> file.toString().endsWith(".md"))
          .sorted()
          .toList();
    }
  }

  /** The commands in the indented and fenced blocks of a page, in order. */
  static List<DocumentedCommand> of(Path page) {
    List<DocumentedCommand> all = new ArrayList<>();
    boolean below = false;
    boolean fenced = false;
    for (String line : lines(page)) {
      if (line.startsWith(FENCE)) {
        fenced = !fenced;
        continue;
      }
      boolean code = fenced || line.startsWith(INDENT);
      var command = COMMAND.matcher(line);
      if (code && command.matches()) {
        all.add(new DocumentedCommand(command.group(1), new ArrayList<>()));
        below = true;
      } else if (below && (code || line.isBlank())) {
        all.get(all.size() - 1).printed().add(fenced ? line : line.replaceFirst(INDENT, ""));
      } else {
        below = false;
      }
    }
    all.forEach(shown -> strip(shown.printed()));
    return all;
  }

  private static List<String> lines(Path page) {
    try {
      return Files.readAllLines(page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void strip(List<String> lines) {
    while (!lines.isEmpty() && lines.get(0).isBlank()) {
      lines.remove(0);
    }
    while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
      lines.remove(lines.size() - 1);
    }
  }

  /** Whether the page shows that the command is refused. */
  boolean refused() {
    return !printed.isEmpty() && printed.get(0).startsWith("fingering: ");
  }

  @Override
  public String toString() {
    return command;
  }
}
