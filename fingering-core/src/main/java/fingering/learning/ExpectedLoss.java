package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.scoring.HabitNetwork;
import java.util.Arrays;
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
  private final double habitStrength;

  /**
   * The objective for some pieces.
   *
   * @param start the start weights in natural units, 0 or more
   * @param strength the strength of the regularization, 0 or more
   */
  ExpectedLoss(
      ImmutableList<TrainingPiece> pieces, double[] start, double strength, double habitStrength) {
    this.pieces = pieces;
    this.start = start.clone();
    this.strength = strength;
    this.habitStrength = habitStrength;
  }

  /** The point of the start weights: their logarithms, or 0 for a rule that is switched off. */
  double[] startPoint() {
    double[] numbers = HabitNetwork.start();
    double[] point = Arrays.copyOf(logarithms(), start.length + 2 * numbers.length);
    System.arraycopy(numbers, 0, point, start.length, numbers.length);
    System.arraycopy(numbers, 0, point, start.length + numbers.length, numbers.length);
    return point;
  }

  private double[] logarithms() {
    double[] logarithms = new double[start.length];
    for (int r = 0; r < logarithms.length; r++) {
      logarithms[r] = start[r] > 0 ? Math.log(start[r]) : 0;
    }
    return logarithms;
  }

  /** The numbers of a habit network at a point; 0 for the violin, 1 for the cello. */
  double[] numbers(double[] point, int network) {
    int from = start.length + network * HabitNetwork.SIZE;
    return Arrays.copyOfRange(point, from, from + HabitNetwork.SIZE);
  }

  /** The weights at a point, in natural units. */
  double[] weights(double[] point) {
    double[] weights = new double[start.length];
    for (int r = 0; r < weights.length; r++) {
      weights[r] = start[r] > 0 ? Math.exp(point[r]) : 0;
    }
    return weights;
  }

  @Override
  public double at(double[] point, double[] gradient) {
    double[] weights = weights(point);
    double[] violin = numbers(point, 0);
    double[] cello = numbers(point, 1);
    int size = point.length;
    // Each version has its own gradient, and the gradients are added in order. The sum is therefore
    // the same to the last bit for any number of threads.
    List<Term> terms =
        pieces.parallelStream()
            .flatMap(
                piece ->
                    piece.versions().stream()
                        .map(version -> term(piece, version, weights, violin, cello, size)))
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

  private static Term term(
      TrainingPiece piece,
      MeasuredVersion version,
      double[] weights,
      double[] violin,
      double[] cello,
      int size) {
    double share = piece.share(version);
    double[] gradient = new double[size];
    double loss = share * version.expectedLoss(weights, violin, cello, gradient);
    for (int r = 0; r < gradient.length; r++) {
      gradient[r] *= share;
    }
    return new Term(loss, gradient);
  }

  /** The regularization term; adds its gradient. */
  private double regularization(double[] point, double[] gradient) {
    double[] origin = logarithms();
    double term = 0;
    for (int i = start.length; i < point.length; i++) {
      term += habitStrength / 2 * point[i] * point[i];
      gradient[i] += habitStrength * point[i];
    }
    for (int r = 0; r < start.length; r++) {
      double distance = start[r] > 0 ? point[r] - origin[r] : 0;
      term += strength / 2 * distance * distance;
      gradient[r] += strength * distance;
    }
    return term;
  }
}
