package fingering.learning;

/**
 * Collects the derivatives of an objective by the cost of each bundle of an {@link AmountTable} and
 * by the score of each grip.
 */
final class Slopes {
  private final double[] byBundle;
  private final double[][] byScore;

  /** The factor of what is added. */
  private double factor = 1;

  /**
   * Slopes of 0.
   *
   * @param bundles the number of bundles
   * @param shape an array for each moment with as many entries as grips
   */
  Slopes(int bundles, double[][] shape) {
    byBundle = new double[bundles];
    byScore = new double[shape.length][];
    for (int m = 0; m < shape.length; m++) {
      byScore[m] = new double[shape[m].length];
    }
  }

  /** Sets the factor of what is added from now on. */
  void addNow(double times) {
    factor = times;
  }

  /** Adds the slope of a grip's own cost; its score counts the other way. */
  void addNode(int moment, int grip, int bundle, double slope) {
    byBundle[bundle] += factor * slope;
    byScore[moment][grip] -= factor * slope;
  }

  /** Adds the slope of an edge's cost. */
  void addEdge(int bundle, double slope) {
    byBundle[bundle] += factor * slope;
  }

  double[] byBundle() {
    return byBundle;
  }

  double[][] byScore() {
    return byScore;
  }
}
