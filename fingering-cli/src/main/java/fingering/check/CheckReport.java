package fingering.check;

/** Prints what was found, score after score, so that none has to be kept. */
public interface CheckReport {
  /** Begins. */
  void begin();

  /** The next score, or the next file that could not be checked. */
  void add(CheckedFile file);

  /** Ends, with what all scores come to. */
  void end(CheckTally tally);
}
