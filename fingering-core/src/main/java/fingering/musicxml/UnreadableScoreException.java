package fingering.musicxml;

import fingering.tables.Choice;
import fingering.tables.FingeringException;
import javax.xml.stream.Location;
import javax.xml.stream.XMLStreamException;

/**
 * A score that cannot be read. The message is one sentence for the user: what is wrong, where, and
 * what to do.
 */
public final class UnreadableScoreException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Creates the exception with the message to show, and what has to be chosen if anything. */
  public UnreadableScoreException(String message, Choice... choices) {
    super(message, choices);
  }

  /** Creates the exception with the message to show and its cause. */
  public UnreadableScoreException(String message, Throwable cause) {
    super(message, cause);
  }

  /** Returns the exception for a score that is not well-formed XML, with line and column. */
  public static UnreadableScoreException malformed(XMLStreamException e) {
    Location location = e.getLocation();
    String place =
        location == null || location.getLineNumber() < 1
            ? ""
            : " at line %d, column %d"
                .formatted(location.getLineNumber(), location.getColumnNumber());
    return new UnreadableScoreException(
        "The score is not well-formed XML%s: export it again from your notation program, or correct the file there."
            .formatted(place),
        e);
  }
}
