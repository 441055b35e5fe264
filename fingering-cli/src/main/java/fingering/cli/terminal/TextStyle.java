package fingering.cli.terminal;

/**
 * Weight and colour of text on a terminal. Never the only sign of anything.
 *
 * @param coloured whether escape sequences are written at all
 */
public record TextStyle(boolean coloured) {
  public static TextStyle of(boolean coloured) {
    return new TextStyle(coloured);
  }

  public String bold(String text) {
    return wrap("1", text);
  }

  public String dim(String text) {
    return wrap("2", text);
  }

  /** What a reader should notice: a difference between plans. */
  public String marked(String text) {
    return wrap("1;36", text);
  }

  private String wrap(String code, String text) {
    return coloured ? "\u001b[" + code + "m" + text + "\u001b[0m" : text;
  }
}
