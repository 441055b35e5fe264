package fingering.learning;

/** Receives the progress of learning. */
public interface LearningProgress {
  /** Ignores the progress. */
  LearningProgress SILENT = (remaining, step) -> {};

  /**
   * Called at the start of each step.
   *
   * @param remaining the number of optimizations that follow the current one; cross-validation
   *     needs one for each piece
   * @param step number of the step in the current optimization, from 1; the total is not known
   */
  void step(int remaining, int step);
}
