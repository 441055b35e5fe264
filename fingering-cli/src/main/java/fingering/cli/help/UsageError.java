package fingering.cli.help;

import com.google.common.base.Strings;
import com.google.common.collect.ImmutableList;
import fingering.tables.NearWord;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Describes a mistyped command in one sentence with the next step. */
public final class UsageError {
  private static final Pattern VALUE =
      Pattern.compile(
          "Invalid value for (?:option '([^']*)'|positional parameter at index [^ ]+ \\(([^)]*)\\))"
              + "[^:]*: (.*)",
          Pattern.DOTALL);
  private static final Pattern CHOICE =
      Pattern.compile("expected one of \\[([^\\]]*)\\] .*but was '(.*)'", Pattern.DOTALL);
  private static final Pattern NUMBER = Pattern.compile("'(.*)' is not an? (int|double|long)");

  private final ParameterException exception;
  private final CommandLine command;
  private final ImmutableList<Class<?>> commands;

  private UsageError(ParameterException exception, ImmutableList<Class<?>> commands) {
    this.exception = exception;
    command = exception.getCommandLine();
    this.commands = commands;
  }

  /**
   * The sentence for a mistyped command.
   *
   * @param commands the classes of all commands
   */
  public static String sentence(ParameterException exception, ImmutableList<Class<?>> commands) {
    UsageError error = new UsageError(exception, commands);
    return error.fault().replaceFirst("\\.$", "")
        + " (see '"
        + error.command.getCommandSpec().qualifiedName()
        + " --help').";
  }

  private String fault() {
    if (exception instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched);
    }
    if (exception instanceof MissingParameterException missing) {
      return missing(missing.getMissing());
    }
    if (exception instanceof OverwrittenOptionException repeated
        && repeated.getOverwritten() instanceof OptionSpec option) {
      return option.longestName() + " is given twice; leave one of them out";
    }
    String message = message();
    if (root() && message.startsWith("Missing required subcommand")) {
      return "name a command, such as 'fingering demo'";
    }
    Matcher value = VALUE.matcher(message);
    return value.matches()
        ? Optional.ofNullable(value.group(1)).orElseGet(() -> value.group(2))
            + ": "
            + value(value.group(3))
        : message;
  }

  private String message() {
    return Strings.nullToEmpty(exception.getMessage());
  }

  private boolean root() {
    return command.getParent() == null;
  }

  private static String value(String fault) {
    Matcher choice = CHOICE.matcher(fault);
    if (choice.matches()) {
      return "'%s' is not one of %s"
          .formatted(choice.group(2), choice.group(1).toLowerCase(Locale.ROOT));
    }
    Matcher number = NUMBER.matcher(fault);
    if (number.matches()) {
      boolean tooLarge = number.group(1).matches("[-+]?[0-9]+");
      String expected = number.group(2).equals("double") ? "number" : "whole number";
      return "'%s' is %s".formatted(number.group(1), tooLarge ? "too large" : "not a " + expected);
    }
    return fault;
  }

  private String missing(List<ArgSpec> missing) {
    if (missing.size() == 1 && missing.get(0) instanceof OptionSpec option) {
      return message().contains("for option")
          ? "%s needs %s".formatted(option.longestName(), OptionValue.phrase(option))
          : "give %s %s too, such as %s"
              .formatted(option.longestName(), option.paramLabel(), OptionValue.example(option));
    }
    return "give "
        + missing.stream()
            .map(
                each ->
                    each instanceof OptionSpec option
                        ? option.longestName() + " " + option.paramLabel()
                        : named((PositionalParamSpec) each))
            .collect(Collectors.joining(" and "))
        + (missing.get(0) instanceof OptionSpec ? " too, such as " + examples(missing) : "");
  }

  private static String examples(List<ArgSpec> missing) {
    return missing.stream()
        .filter(OptionSpec.class::isInstance)
        .map(each -> OptionValue.example((OptionSpec) each))
        .collect(Collectors.joining(" "));
  }

  private static String named(PositionalParamSpec missing) {
    String description = String.join(" ", missing.description()).replaceFirst("\\.$", "");
    return "the " + missing.paramLabel() + ": " + description;
  }

  private String unmatched(UnmatchedArgumentException unmatched) {
    String first = unmatched.getUnmatched().get(0);
    if (unmatched.isUnknownOption() || first.startsWith("--")) {
      return unknownOption(first.replaceFirst("=.*", ""));
    }
    if (!command.getSubcommands().isEmpty()) {
      return unknownCommand(first);
    }
    return "'%s' is one word too many; put names with spaces in quotes".formatted(first);
  }

  private String unknownCommand(String word) {
    String name = command.getCommandSpec().qualifiedName();
    List<String> known = List.copyOf(command.getSubcommands().keySet());
    if (root() && word.equals("help")) {
      return "there is no command 'help'; for the help of one command, type 'fingering plan --help'";
    }
    if (root() && (exists(word) || word.matches(".*\\.[a-z]{2,9}"))) {
      return "'%s' is not a command; put one before the file, such as 'fingering compare %s'"
          .formatted(word, word);
    }
    return "there is no command '%s %s'; %s".formatted(name, word, NearWord.advice(word, known));
  }

  private String unknownOption(String typed) {
    String name = command.getCommandName();
    List<String> others =
        commands.stream()
            .map(CommandLine::new)
            .filter(other -> other.getCommandSpec().findOption(typed) != null)
            .map(other -> "'" + other.getCommandName() + "'")
            .toList();
    if (root() && !others.isEmpty()) {
      return "put the command before its options, such as 'fingering compare SCORE %s'"
          .formatted(typed);
    }
    if (!others.isEmpty()) {
      return "%s is an option of %s, not of '%s'; leave it out"
          .formatted(typed, String.join(", ", others), name);
    }
    List<String> own =
        command.getCommandSpec().options().stream()
            .flatMap(option -> Stream.of(option.names()))
            .toList();
    return NearWord.to(typed, own)
        .map(near -> "there is no option %s; did you mean %s?".formatted(typed, near))
        .orElseGet(() -> "'%s' has no option %s".formatted(name, typed));
  }

  private static boolean exists(String word) {
    try {
      return Files.exists(Path.of(word));
    } catch (InvalidPathException e) {
      return false;
    }
  }
}
