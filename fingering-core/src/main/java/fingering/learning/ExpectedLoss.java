package fingering.learning;

import com.google.common.collect.ImmutableList;
import java.util.List;

/**
 * What learning makes least: how far a path is expected to differ from the printed marks, and half
 * the strength times the squared distance from the start, all in logarithms of weights. A rule that
 * weighs nothing at the start is switched off, and stays so.
 */
final class ExpectedLoss implements Lbfgs.Function {
  private final ImmutableList<TrainingPiece> pieces;
  private final double[] start;
  private final double strength;

  /**
   * The loss expected in some pieces.
   *
   * @param start the weights at the start in natural units, 0 or more
   * @param strength how strongly they hold, 0 or more
   */
  ExpectedLoss(ImmutableList<TrainingPiece> pieces, double[] start, double strength) {
    this.pieces = pieces;
    this.start = start.clone();
    this.strength = strength;
  }

  /** The logarithms of the start weights; 0 for a rule that is switched off. */
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
    // Each music adds to a gradient of its own, and these are added in order, so that the sum is
    // the same to the last bit however many threads there are.
    List<Sum> sums =
        pieces.parallelStream()
            .flatMap(piece -> piece.lessons().stream().map(lesson -> sum(piece, lesson, weights)))
            .toList();
    double value = 0;
    for (Sum sum : sums) {
      value += sum.loss;
      for (int r = 0; r < gradient.length; r++) {
        gradient[r] += sum.gradient[r];
      }
    }
    return value + pull(point, gradient);
  }

  private static final class Sum {
    private final double loss;
    private final double[] gradient;

    Sum(double loss, double[] gradient) {
      this.loss = loss;
      this.gradient = gradient;
    }
  }

  private static Sum sum(TrainingPiece piece, MeasuredPiece lesson, double[] weights) {
    double share = piece.share(lesson);
    double[] gradient = new double[weights.length];
    double loss = share * lesson.expectedLoss(weights, gradient);
    for (int r = 0; r < gradient.length; r++) {
      gradient[r] *= share;
    }
    return new Sum(loss, gradient);
  }

  private double pull(double[] point, double[] gradient) {
    double[] home = startPoint();
    double pull = 0;
    for (int r = 0; r < point.length; r++) {
      double away = start[r] > 0 ? point[r] - home[r] : 0;
      pull += strength / 2 * away * away;
      gradient[r] += strength * away;
    }
    return pull;
  }
}
