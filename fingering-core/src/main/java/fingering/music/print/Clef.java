package fingering.music.print;

import fingering.tables.FingeringException;
import fingering.tables.Letter;
import fingering.tables.Pitch;

/**
 * A clef.
 *
 * @param sign the shape
 * @param line the line of the staff that the clef marks, 1 for the lowest to 5
 * @param octaves octave transposition: -1 for a clef with an 8 below
 */
public record Clef(Sign sign, int line, int octaves) {
  /** The shape of a clef, and the note that its line has. */
  public enum Sign {
    /** Marks the G above middle C. */
    G(new Pitch(Letter.G, 0, 4)),
    /** Marks the F below middle C. */
    F(new Pitch(Letter.F, 0, 3)),
    /** Marks middle C. */
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
      throw new FingeringException(
          "a clef is on one of the lines 1 to 5 of the staff, not on line " + line);
    }
  }

  /** The place of a written note on the staff, in steps above the lowest line; below 0 under it. */
  public int step(Pitch written) {
    return written.letterNumber() - sign.letterNumber - 7 * octaves + 2 * (line - 1);
  }

  /** The common name: treble, alto, tenor or bass; otherwise letter and line. */
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
