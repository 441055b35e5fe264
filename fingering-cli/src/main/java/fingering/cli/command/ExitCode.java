package fingering.cli.command;

import fingering.check.CheckTally;

/** The exit codes of all commands. */
public final class ExitCode {
  /** Done. */
  public static final int DONE = CheckTally.CLEAN;

  /** Done, with something to look at: findings, or requirements that are not met. */
  public static final int FINDINGS = CheckTally.FOUND;

  /** The command line or a file cannot be used, or no plan meets the demands. */
  public static final int REFUSED = CheckTally.UNREAD;

  /** The program failed. */
  public static final int FAILED = 3;

  private ExitCode() {}
}
