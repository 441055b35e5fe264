package fingering.cli.terminal;

import com.google.common.collect.ImmutableSet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * The command to type next: the score and those options of the present command that the next one
 * has too, and further words.
 */
public final class NextCommand {
  private static final String PROGRAM = "fingering";

  /** Options that belong to one output, not to the music or the player. */
  private static final ImmutableSet<String> OWN =
      ImmutableSet.of(
          "--output",
          "--format",
          "--notes",
          "--costs",
          "--choose",
          "--write",
          "--sparing",
          "--only",
          "--strings",
          "--save-lesson",
          "--best",
          "--brief",
          "--why",
          "--choices");

  private NextCommand() {}

  /**
   * The lines of the command; all but the last end with a backslash.
   *
   * @param present the command that runs now
   * @param saved the lesson that it saves, which then holds the score and the options
   * @param next the name of the next command
   * @param more further words, such as options with their values
   * @param columns the width of the lines
   */
  public static List<String> lines(
      CommandSpec present, Optional<Path> saved, String next, List<String> more, int columns) {
    List<String> words = new ArrayList<>(List.of(PROGRAM, next));
    if (saved.isPresent()) {
      words.add("--lesson " + quoted(saved.get().toString()));
    } else {
      repeat(present, next, words);
    }
    words.addAll(more);
    return wrapped(words, columns);
  }

  /** Repeats the score and the options that the next command has too. */
  private static void repeat(CommandSpec present, String next, List<String> words) {
    ParseResult parsed = present.commandLine().getParseResult();
    parsed.matchedPositionals().stream()
        .map(ArgSpec::originalStringValues)
        .forEach(values -> values.forEach(value -> words.add(quoted(value))));
    CommandLine command = present.root().subcommands().getOrDefault(next, present.commandLine());
    for (OptionSpec option : new LinkedHashSet<>(parsed.matchedOptions())) {
      String name = option.longestName();
      if (!OWN.contains(name) && command.getCommandSpec().optionsMap().containsKey(name)) {
        if (option.arity().max() == 0) {
          words.add(name);
        }
        option.originalStringValues().stream()
            .filter(value -> option.arity().max() > 0)
            .forEach(value -> words.add(name + " " + quoted(value)));
      }
    }
  }

  private static List<String> wrapped(List<String> words, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words) {
      if (line.length() > 0 && line.length() + 3 + word.length() > columns) {
        lines.add(line + " \\");
        line = new StringBuilder("  ");
      }
      line.append(line.length() > 0 && !line.toString().isBlank() ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static String quoted(String word) {
    return word.matches("[\\w./:=@,+%-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
