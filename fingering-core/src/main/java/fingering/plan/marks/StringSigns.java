package fingering.plan.marks;

/** How the strings of a plan are written into a part. */
public enum StringSigns {
  /**
   * A Roman numeral above the staff, where the hand would guess the string wrongly. Every notation
   * program shows it.
   */
  WORDS,

  /** A string number at every change of string, which many notation programs do not show. */
  ELEMENTS,

  /** The numerals and the numbers. */
  BOTH,

  /** Neither. */
  NONE;

  /** Returns whether numerals are written above the staff. */
  public boolean words() {
    return this == WORDS || this == BOTH;
  }

  /** Returns whether string numbers are written at the notes. */
  public boolean elements() {
    return this == ELEMENTS || this == BOTH;
  }
}
