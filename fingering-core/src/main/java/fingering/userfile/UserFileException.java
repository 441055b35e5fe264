package fingering.userfile;

import fingering.tables.FingeringException;

/** A user file that cannot be read. The message is one sentence with file, line and advice. */
public final class UserFileException extends FingeringException {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final int line;
  private final String problem;

  UserFileException(FileLine place, String problem) {
    super(place + ": " + problem);
    file = place.file();
    line = place.line();
    this.problem = problem;
  }

  UserFileException(FileLine place, String problem, FingeringException cause) {
    super(place + ": " + problem, cause);
    file = place.file();
    line = place.line();
    this.problem = problem;
  }

  /** The line that cannot be read. */
  public FileLine place() {
    return new FileLine(file, line);
  }

  /** The message without file and line. */
  public String problem() {
    return problem;
  }
}
