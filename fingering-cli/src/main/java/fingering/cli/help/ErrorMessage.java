package fingering.cli.help;

import fingering.tables.FingeringException;

/** The sentence that the program prints when something goes wrong. */
public final class ErrorMessage {
  private ErrorMessage() {}

  /** One sentence for whatever went wrong; what was not foreseen says so. */
  public static String sentence(Throwable exception) {
    if (exception instanceof OutOfMemoryError) {
      return "This takes more memory than Java may use here: split the score, ask for fewer"
          + " measures, or set JAVA_TOOL_OPTIONS=-Xmx8g.";
    }
    if (exception instanceof StackOverflowError) {
      return "This goes deeper than Java may go here: check that the file is a score, or set"
          + " JAVA_TOOL_OPTIONS=-Xss16m.";
    }
    return foreseen(exception)
        ? exception.getMessage().replaceFirst("(?<=[^.?])$", ".")
        : "something went wrong that was not foreseen ("
            + exception.getClass().getSimpleName()
            + ": "
            + exception.getMessage()
            + "); please report it with the score that caused it.";
  }

  /**
   * Whether what went wrong lies with what was typed or read, or with the means of the computer.
   */
  public static boolean foreseen(Throwable exception) {
    return exception instanceof FingeringException || exception instanceof StackOverflowError;
  }
}
