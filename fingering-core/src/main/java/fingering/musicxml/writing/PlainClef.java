package fingering.musicxml.writing;

/** The clefs of string parts. */
public enum PlainClef {
  /** G on the second line. */
  TREBLE("G", 2),
  /** C on the third line. */
  ALTO("C", 3),
  /** C on the fourth line. */
  TENOR("C", 4),
  /** F on the fourth line. */
  BASS("F", 4);

  private final String sign;
  private final int line;

  PlainClef(String sign, int line) {
    this.sign = sign;
    this.line = line;
  }

  /** Returns the sign in MusicXML: G, C or F. */
  String sign() {
    return sign;
  }

  /** Returns the line of the sign, 1 for the lowest. */
  int line() {
    return line;
  }
}
