package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.scoring.HabitNetwork;
import java.util.Arrays;
import java.util.List;

/**
 * The objective of learning, as a function of the logarithms of the weights and of the numbers of
 * the habit network: the expected loss of a path, which is its difference from the printed marks,
 * mixed with the negative log likelihood of these marks, plus two L2 regularization terms. One is
 * half the strength times the squared distance from the start weights, the other half the strength
 * of the habit times the squares of its numbers. A rule with start weight 0 stays switched off.
 */
final class ExpectedLoss implements Lbfgs.Function {
  private final ImmutableList<TrainingPiece> pieces;
  private final double[] start;
  private final LearningMethod method;
  private final double[] network;

  /**
   * The objective for some pieces.
   *
   * @param start the start weights in natural units, 0 or more
   */
  ExpectedLoss(ImmutableList<TrainingPiece> pieces, double[] start, LearningMethod method) {
    this.pieces = pieces;
    this.start = start.clone();
    this.method = method;
    network = method.habit() ? HabitNetwork.start() : new double[0];
  }

  /** The start: the logarithms of the start weights, 0 for a rule that is switched off. */
  double[] startPoint() {
    double[] point = Arrays.copyOf(logarithms(), start.length + network.length);
    System.arraycopy(network, 0, point, start.length, network.length);
    return point;
  }

  private double[] logarithms() {
    double[] logarithms = new double[start.length];
    for (int r = 0; r < logarithms.length; r++) {
      logarithms[r] = start[r] > 0 ? Math.log(start[r]) : 0;
    }
    return logarithms;
  }

  /** The weights at a point, in natural units. */
  double[] weights(double[] point) {
    double[] weights = new double[start.length];
    for (int r = 0; r < weights.length; r++) {
      weights[r] = start[r] > 0 ? Math.exp(point[r]) : 0;
    }
    return weights;
  }

  /** The numbers of the habit network at a point; none if no habit is learned. */
  double[] network(double[] point) {
    return Arrays.copyOfRange(point, start.length, point.length);
  }

  @Override
  public double at(double[] point, double[] gradient) {
    double[] weights = weights(point);
    double[] numbers = network(point);
    // Each version has its own gradient, and the gradients are added in order. The sum is therefore
    // the same to the last bit for any number of threads.
    List<Term> terms =
        pieces.parallelStream()
            .flatMap(
                piece ->
                    piece.all().stream().map(version -> term(piece, version, weights, numbers)))
            .toList();
    double value = 0;
    for (Term term : terms) {
      value += term.value;
      for (int r = 0; r < gradient.length; r++) {
        gradient[r] += term.gradient[r];
      }
    }
    return value + regularization(point, gradient);
  }

  private static final class Term {
    private final double value;
    private final double[] gradient;

    Term(double value, double[] gradient) {
      this.value = value;
      this.gradient = gradient;
    }
  }

  private Term term(
      TrainingPiece piece, MeasuredVersion version, double[] weights, double[] numbers) {
    double share = piece.share(version);
    double[] gradient = new double[weights.length + numbers.length];
    double value = share * version.objective(method.likelihood(), weights, numbers, gradient);
    for (int r = 0; r < gradient.length; r++) {
      gradient[r] *= share;
    }
    return new Term(value, gradient);
  }

  /** The regularization terms; adds their gradients. */
  private double regularization(double[] point, double[] gradient) {
    double[] origin = logarithms();
    double term = 0;
    for (int r = 0; r < point.length; r++) {
      boolean isWeight = r < start.length;
      double strength = isWeight ? method.strength() : method.habitStrength();
      double from = isWeight ? origin[r] : 0;
      double distance = isWeight && start[r] == 0 ? 0 : point[r] - from;
      term += strength / 2 * distance * distance;
      gradient[r] += strength * distance;
    }
    return term;
  }
}
