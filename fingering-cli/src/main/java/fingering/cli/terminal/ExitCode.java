package fingering.cli.terminal;

import fingering.check.CheckTally;

/** What the exit codes of the command say; they hold for every command. */
public final class ExitCode {
  /** All was done. */
  public static final int DONE = CheckTally.CLEAN;

  /**
   * All was done and printed, and there is something to look at: findings, or what is left open.
   */
  public static final int LOOK = CheckTally.FOUND;

  /** What was typed, or a file, cannot be used, or no plan meets what was asked. */
  public static final int REFUSED = CheckTally.UNREAD;

  /** The program itself failed. */
  public static final int FAULT = 3;

  private ExitCode() {}
}
