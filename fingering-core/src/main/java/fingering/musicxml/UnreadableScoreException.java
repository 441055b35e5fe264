package fingering.musicxml;

import fingering.tables.FingeringException;
import javax.xml.stream.Location;
import javax.xml.stream.XMLStreamException;

/**
 * A score that cannot be read. The message is one sentence for the person at the keyboard: what is
 * wrong, where, and what to do next.
 */
public final class UnreadableScoreException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Makes the exception with the sentence to show. */
  public UnreadableScoreException(String message) {
    super(message);
  }

  /** Makes the exception with the sentence to show and the failure underneath, for logs. */
  public UnreadableScoreException(String message, Throwable cause) {
    super(message, cause);
  }

  /** The sentence for a score that is not well-formed XML, with the place. */
  public static UnreadableScoreException malformed(XMLStreamException e) {
    Location where = e.getLocation();
    String place =
        where == null || where.getLineNumber() < 1
            ? ""
            : " at line %d, column %d".formatted(where.getLineNumber(), where.getColumnNumber());
    return new UnreadableScoreException(
        "The score is not well-formed XML%s: export it again from your notation program, or mend it there."
            .formatted(place),
        e);
  }
}
