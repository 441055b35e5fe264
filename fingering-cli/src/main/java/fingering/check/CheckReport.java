package fingering.check;

/** Prints findings one score after another, so none has to be kept in memory. */
public interface CheckReport {
  /** Begins the report. */
  void begin();

  /** Adds the next score, or the next file that could not be checked. */
  void add(CheckedFile file);

  /** Ends the report with the totals. */
  void end(CheckTally tally);
}
