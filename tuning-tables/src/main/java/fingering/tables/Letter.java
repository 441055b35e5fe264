package fingering.tables;

/** The seven note letters, from C up, where octaves begin. */
public enum Letter {
  C(0, 0),
  D(1, 2),
  E(2, 4),
  F(3, 5),
  G(4, 7),
  A(5, 9),
  B(6, 11);

  private final int steps;
  private final int semitones;

  Letter(int steps, int semitones) {
    this.steps = steps;
    this.semitones = semitones;
  }

  /** Letters above C, 0 to 6. */
  public int steps() {
    return steps;
  }

  /** Semitones of the natural note above C, 0 to 11. */
  public int semitones() {
    return semitones;
  }
}
