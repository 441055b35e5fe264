package fingering.fingerboard;

import fingering.tables.FingeringException;

/** The finger that stops a string, the thumb, or none for an open string. */
public enum Finger {
  OPEN("0", 0),
  FIRST("1", 1),
  SECOND("2", 2),
  THIRD("3", 3),
  FOURTH("4", 4),
  THUMB("T", 0);

  private final String symbol;
  private final int number;

  Finger(String symbol, int number) {
    this.symbol = symbol;
    this.number = number;
  }

  /**
   * The finger with that number.
   *
   * @param number 1 to 4
   * @throws FingeringException if there is no such finger
   */
  public static Finger of(int number) {
    return switch (number) {
      case 1 -> FIRST;
      case 2 -> SECOND;
      case 3 -> THIRD;
      case 4 -> FOURTH;
      default -> throw new FingeringException("there is no finger " + number);
    };
  }

  /** The printed symbol: 0 for an open string, 1 to 4, or T for the thumb. */
  public String symbol() {
    return symbol;
  }

  /** The number: 1 to 4 for a finger, 0 for an open string and for the thumb. */
  public int number() {
    return number;
  }
}
