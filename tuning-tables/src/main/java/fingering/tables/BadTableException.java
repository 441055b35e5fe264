package fingering.tables;

/** A table of facts cannot be read; the message names the table and, where it can, the line. */
public final class BadTableException extends FingeringException {
  private static final long serialVersionUID = 1L;

  BadTableException(String table, int line, String complaint) {
    super(table + ", line " + line + ": " + complaint);
  }
}
