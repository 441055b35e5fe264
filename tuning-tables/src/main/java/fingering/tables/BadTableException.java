package fingering.tables;

/** A table cannot be read; the message names the table and, if possible, the line. */
public final class BadTableException extends FingeringException {
  private static final long serialVersionUID = 1L;

  BadTableException(String table, int line, String problem) {
    super(table + ", line " + line + ": " + problem);
  }
}
