package fingering.engraving.ink;

import java.util.Locale;

/**
 * How something is drawn. The style sheet of the music, {@code music.css} of the command line, has
 * a rule for each that is not {@link #plain}.
 */
public enum Style {
  INK(true),
  BAR(true),
  STAFF(false),
  STEM(false),
  LEDGER(false),
  CURVE(false),
  LINE(false),
  HAIRPIN(false),
  DASHES(false),
  DOTS(false),
  RING(false),
  WORDS(false),
  TEMPO(false),
  REHEARSAL(false),
  METRONOME(false),
  NUMBER(false),
  ENDING(false),
  POSITION(false),
  MARK(false),
  /** The fingers of the first plan, the second and the third. */
  FIRST(true),
  SECOND(false),
  THIRD(false);

  private final boolean plain;

  Style(boolean plain) {
    this.plain = plain;
  }

  /** Whether it is filled with the ink of the music, which needs no rule. */
  public boolean plain() {
    return plain;
  }

  /** Its class in SVG. */
  public String css() {
    return name().toLowerCase(Locale.ROOT);
  }
}
