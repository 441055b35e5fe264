package fingering.tables;

/** A table of facts has a row that cannot be read; the message names table and line. */
public final class BadTableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BadTableException(String table, int line, String complaint) {
    super(table + ", line " + line + ": " + complaint);
  }
}
