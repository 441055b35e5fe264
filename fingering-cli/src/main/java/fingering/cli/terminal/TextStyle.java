package fingering.cli.terminal;

/**
 * Weight and colour of text on a terminal. No meaning depends on them alone.
 *
 * @param coloured whether to write escape sequences
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

  /** Text that readers should notice, such as a difference between plans. */
  public String marked(String text) {
    return wrap("1;36", text);
  }

  private String wrap(String code, String text) {
    return coloured ? "\u001b[" + code + "m" + text + "\u001b[0m" : text;
  }
}
