package fingering.userfile;

import fingering.tables.FingeringException;

/**
 * A line of a file.
 *
 * @param file the name of the file, as messages show it
 * @param line the line, from 1
 */
public record FileLine(String file, int line) {
  /** An exception for this line; its problem is one sentence without file and line. */
  public UserFileException refusal(String problem) {
    return new UserFileException(this, problem);
  }

  /** An exception for this line with the message of another one as its problem. */
  UserFileException refusal(FingeringException cause) {
    return new UserFileException(this, cause.getMessage(), cause);
  }

  /** The place as messages show it: {@code imke.yaml, line 4}. */
  @Override
  public String toString() {
    return file + ", line " + line;
  }
}
