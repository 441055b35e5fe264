package fingering.cli;

/**
 * Weight and colour of text on a terminal. Never the only sign of anything.
 *
 * @param coloured whether escape sequences are written at all
 */
record Style(boolean coloured) {
  static Style of(boolean coloured) {
    return new Style(coloured);
  }

  String bold(String text) {
    return wrap("1", text);
  }

  String dim(String text) {
    return wrap("2", text);
  }

  /** What a reader should notice: a difference between plans. */
  String marked(String text) {
    return wrap("1;36", text);
  }

  private String wrap(String code, String text) {
    return coloured ? "\u001b[" + code + "m" + text + "\u001b[0m" : text;
  }
}
