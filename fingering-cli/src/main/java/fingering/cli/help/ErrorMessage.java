package fingering.cli.help;

import com.google.common.base.Strings;
import fingering.tables.Choice;
import fingering.tables.FingeringException;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sentence for an exception that ends a command. */
public final class ErrorMessage {
  private ErrorMessage() {}

  /** One sentence for an exception or error. */
  public static String sentence(Throwable exception) {
    if (exception instanceof OutOfMemoryError) {
      return "This needs more memory than Java may use: split the score, choose fewer measures, or"
          + " set JAVA_TOOL_OPTIONS=-Xmx8g.";
    }
    if (exception instanceof StackOverflowError) {
      return "This file is nested too deeply for Java: check that it is a score, or set"
          + " JAVA_TOOL_OPTIONS=-Xss16m.";
    }
    return isExpected(exception)
        ? Strings.nullToEmpty(exception.getMessage()).replaceFirst("(?<=[^.?])$", ".")
            + options(exception)
        : "the program failed unexpectedly (%s); please report this with the files that caused it."
            .formatted(place(exception));
  }

  /** The options with which to choose what is open: {@code Use --part.} */
  private static String options(Throwable exception) {
    String options =
        exception instanceof FingeringException open
            ? open.choices().stream().map(ErrorMessage::option).collect(Collectors.joining(" and "))
            : "";
    return options.isEmpty() ? "" : " Use " + options + ".";
  }

  private static String option(Choice choice) {
    return switch (choice) {
      case PART -> "--part";
      case INSTRUMENT -> "--instrument";
      case VOICE -> "--voice";
      case TUNE -> "--tune";
      case START_TEMPO -> "--from";
    };
  }

  /** The line of the program that failed, which says more to its authors than Java's message. */
  private static String place(Throwable exception) {
    return Stream.of(exception.getStackTrace())
        .filter(line -> line.getClassName().startsWith("fingering."))
        .findFirst()
        .map(line -> line.getFileName() + ", line " + line.getLineNumber())
        .orElse("at an unknown place");
  }

  /** Whether the cause is the input or a limit of the computer, not a fault of the program. */
  public static boolean isExpected(Throwable exception) {
    return exception instanceof FingeringException || exception instanceof StackOverflowError;
  }
}
