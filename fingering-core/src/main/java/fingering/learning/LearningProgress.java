package fingering.learning;

/** Is told how far learning has come. */
public interface LearningProgress {
  /** Tells nobody. */
  LearningProgress SILENT = (left, step) -> {};

  /**
   * A step begins.
   *
   * @param left how often the weights are still to be learned after this time: once for each piece
   *     left out
   * @param step number of the step, from 1; how many there will be is not known
   */
  void step(int left, int step);
}
