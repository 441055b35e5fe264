package fingering.fingerboard;

import fingering.tables.FingeringException;

/** What stops the string: nothing, one of the four fingers, or the thumb. */
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
   * The finger of that number, 1 to 4.
   *
   * @throws FingeringException if there is none
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

  /** The sign in print: 0 for open, 1 to 4, T for the thumb. */
  public String symbol() {
    return symbol;
  }

  /** 1 to 4 for a finger, 0 for an open string and for the thumb. */
  public int number() {
    return number;
  }
}
