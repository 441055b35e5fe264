package fingering.music;

import fingering.tables.FingeringException;
import fingering.tables.Letter;
import fingering.tables.Pitch;

/**
 * A clef: which line of the staff carries which note.
 *
 * @param sign its shape
 * @param line the line it stands on, 1 the lowest, to 5
 * @param octaves octaves by which the notes lie above what it shows: -1 for an 8 below
 */
public record Clef(Sign sign, int line, int octaves) {
  /** The three shapes of clefs. */
  public enum Sign {
    /** Carries the G above middle C. */
    G(new Pitch(Letter.G, 0, 4)),
    /** Carries the F below middle C. */
    F(new Pitch(Letter.F, 0, 3)),
    /** Carries middle C. */
    C(new Pitch(Letter.C, 0, 4));

    private final int letterNumber;

    Sign(Pitch pitch) {
      letterNumber = pitch.letterNumber();
    }
  }

  /** The treble clef. */
  public static final Clef TREBLE = new Clef(Sign.G, 2, 0);

  /** The bass clef. */
  public static final Clef BASS = new Clef(Sign.F, 4, 0);

  /** The alto clef. */
  public static final Clef ALTO = new Clef(Sign.C, 3, 0);

  /** The tenor clef. */
  public static final Clef TENOR = new Clef(Sign.C, 4, 0);

  /**
   * Checks the components.
   *
   * @throws FingeringException if the line is not 1 to 5
   */
  public Clef {
    if (line < 1 || line > 5) {
      throw new FingeringException("a clef on line " + line + " of five");
    }
  }

  /** Where a note stands: steps above the lowest line, below 0 under the staff. */
  public int step(Pitch written) {
    return written.letterNumber() - sign.letterNumber - 7 * octaves + 2 * (line - 1);
  }

  /** The name players call it by: treble, alto, tenor, bass; else its letter and line. */
  public String display() {
    Clef plain = new Clef(sign, line, 0);
    if (plain.equals(TREBLE)) {
      return "treble";
    }
    if (plain.equals(BASS)) {
      return "bass";
    }
    if (plain.equals(ALTO)) {
      return "alto";
    }
    return plain.equals(TENOR) ? "tenor" : sign + " on line " + line;
  }
}
