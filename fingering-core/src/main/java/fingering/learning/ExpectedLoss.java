package fingering.learning;

import com.google.common.collect.ImmutableList;
import java.util.List;

/**
 * The objective of learning, as a function of the logarithms of the weights: the expected loss of a
 * path, which is its difference from the printed marks, plus an L2 regularization term. That term
 * is half the strength times the squared distance from the start weights. A rule with start weight
 * 0 stays switched off.
 */
final class ExpectedLoss implements Lbfgs.Function {
  private final ImmutableList<TrainingPiece> pieces;
  private final double[] start;
  private final double strength;

  /**
   * The objective for some pieces.
   *
   * @param start the start weights in natural units, 0 or more
   * @param strength the strength of the regularization, 0 or more
   */
  ExpectedLoss(ImmutableList<TrainingPiece> pieces, double[] start, double strength) {
    this.pieces = pieces;
    this.start = start.clone();
    this.strength = strength;
  }

  /** The point of the start weights: their logarithms, or 0 for a rule that is switched off. */
  double[] startPoint() {
    double[] point = new double[start.length];
    for (int r = 0; r < point.length; r++) {
      point[r] = start[r] > 0 ? Math.log(start[r]) : 0;
    }
    return point;
  }

  /** The weights at a point, in natural units. */
  double[] weights(double[] point) {
    double[] weights = new double[point.length];
    for (int r = 0; r < weights.length; r++) {
      weights[r] = start[r] > 0 ? Math.exp(point[r]) : 0;
    }
    return weights;
  }

  @Override
  public double at(double[] point, double[] gradient) {
    double[] weights = weights(point);
    // Each version has its own gradient, and the gradients are added in order. The sum is therefore
    // the same to the last bit for any number of threads.
    List<Term> terms =
        pieces.parallelStream()
            .flatMap(
                piece -> piece.versions().stream().map(version -> term(piece, version, weights)))
            .toList();
    double value = 0;
    for (Term term : terms) {
      value += term.loss;
      for (int r = 0; r < gradient.length; r++) {
        gradient[r] += term.gradient[r];
      }
    }
    return value + regularization(point, gradient);
  }

  private static final class Term {
    private final double loss;
    private final double[] gradient;

    Term(double loss, double[] gradient) {
      this.loss = loss;
      this.gradient = gradient;
    }
  }

  private static Term term(TrainingPiece piece, MeasuredVersion version, double[] weights) {
    double share = piece.share(version);
    double[] gradient = new double[weights.length];
    double loss = share * version.expectedLoss(weights, gradient);
    for (int r = 0; r < gradient.length; r++) {
      gradient[r] *= share;
    }
    return new Term(loss, gradient);
  }

  /** The regularization term; adds its gradient. */
  private double regularization(double[] point, double[] gradient) {
    double[] origin = startPoint();
    double term = 0;
    for (int r = 0; r < point.length; r++) {
      double distance = start[r] > 0 ? point[r] - origin[r] : 0;
      term += strength / 2 * distance * distance;
      gradient[r] += strength * distance;
    }
    return term;
  }
}
