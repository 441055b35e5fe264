package fingering.learning;

import java.util.Arrays;

/**
 * Computes expectations over all paths of a lattice with the forward-backward algorithm. The result
 * is exact, and the time is linear in the number of edges. Sums are probabilities, not logarithms,
 * and are scaled to 1 at each moment.
 */
final class ForwardBackward {
  private final Lattice lattice;
  private final double[] factors;
  private final double[][] losses;

  /** A further factor of each grip of each moment. */
  private final double[][] own;

  /** The forward probability of each grip of each moment, given the moments up to it. */
  private final double[][] forward;

  /** The expected loss up to each grip of each moment, with its own loss. */
  private final double[][] past;

  /** The scaling factor of each moment. */
  private final double[] scale;

  private ForwardBackward(Lattice lattice, double[] factors, double[][] own, double[][] losses) {
    this.lattice = lattice;
    this.factors = factors;
    this.own = own;
    this.losses = losses;
    forward = new double[lattice.moments()][];
    past = new double[lattice.moments()][];
    scale = new double[lattice.moments()];
  }

  /**
   * The expected loss of a path whose probability is proportional to exp(−cost).
   *
   * @param factors exp(−cost) of each bundle
   * @param own a further factor of each grip of each moment
   * @param losses the loss of each grip of each moment
   * @param slopes receives for each bundle, in addition to its value, the decrease of the expected
   *     loss per unit of the bundle's cost: the covariance of the loss and the number of times that
   *     the bundle occurs
   * @param ownSlopes receives the same for each grip of each moment
   */
  static double expected(
      Lattice lattice,
      double[] factors,
      double[][] own,
      double[][] losses,
      double[] slopes,
      double[][] ownSlopes) {
    ForwardBackward passes = new ForwardBackward(lattice, factors, own, losses);
    double expected = passes.forward();
    passes.backward(expected, slopes, ownSlopes);
    return expected;
  }

  /**
   * The logarithm of the sum of the factors of all paths.
   *
   * @param slopes receives for each bundle, in addition to its value, the expected number of times
   *     that it occurs, times a sign
   * @param ownSlopes receives the same for each grip of each moment
   */
  static double logSum(
      Lattice lattice,
      double[] factors,
      double[][] own,
      double sign,
      double[] slopes,
      double[][] ownSlopes) {
    double[][] losses = new double[own.length][];
    for (int m = 0; m < own.length; m++) {
      losses[m] = new double[own[m].length];
    }
    ForwardBackward passes = new ForwardBackward(lattice, factors, own, losses);
    passes.sign = sign;
    passes.forward();
    passes.backward(0, slopes, ownSlopes);
    double sum = 0;
    for (double s : passes.scale) {
      sum += Math.log(s);
    }
    return sum;
  }

  private double sign;

  private double forward() {
    int last = lattice.moments() - 1;
    for (int m = 0; m <= last; m++) {
      int[] nodes = lattice.nodes(m);
      forward[m] = new double[nodes.length];
      past[m] = new double[nodes.length];
      if (m == 0) {
        Arrays.fill(forward[m], 1);
      } else {
        enter(m);
      }
      for (int j = 0; j < nodes.length; j++) {
        past[m][j] += losses[m][j];
        forward[m][j] *= factors[nodes[j]] * own[m][j];
        scale[m] += forward[m][j];
      }
      for (int j = 0; j < nodes.length; j++) {
        forward[m][j] /= scale[m];
      }
    }
    double expected = 0;
    for (int j = 0; j < forward[last].length; j++) {
      expected += forward[last][j] * past[last][j];
    }
    return expected;
  }

  /** Carries probabilities and expected losses over the edges to a moment. */
  private void enter(int m) {
    int[] edges = lattice.edges(m);
    double[] now = forward[m];
    double[] loss = past[m];
    for (int i = 0; i < forward[m - 1].length; i++) {
      double before = forward[m - 1][i];
      double lossBefore = past[m - 1][i];
      int row = i * now.length;
      for (int j = 0; j < now.length; j++) {
        double probability = before * factors[edges[row + j]];
        now[j] += probability;
        loss[j] += probability * lossBefore;
      }
    }
    for (int j = 0; j < now.length; j++) {
      loss[j] = now[j] > 0 ? loss[j] / now[j] : 0;
    }
  }

  private void backward(double expected, double[] slopes, double[][] ownSlopes) {
    double[] backward = new double[forward[lattice.moments() - 1].length];
    Arrays.fill(backward, 1);
    double[] future = new double[backward.length];
    for (int m = lattice.moments() - 1; m >= 0; m--) {
      int[] nodes = lattice.nodes(m);
      double[] entering = new double[backward.length];
      for (int j = 0; j < backward.length; j++) {
        double probability = forward[m][j] * backward[j];
        double slope = probability * (sign != 0 ? sign : past[m][j] + future[j] - expected);
        slopes[nodes[j]] += slope;
        ownSlopes[m][j] += slope;
        entering[j] = factors[nodes[j]] * own[m][j] * backward[j] / scale[m];
        future[j] += losses[m][j];
      }
      if (m > 0) {
        double[] futureBefore = new double[forward[m - 1].length];
        backward = leave(m, entering, future, futureBefore, expected, slopes);
        future = futureBefore;
      }
    }
  }

  /**
   * Carries probabilities and expected losses over the edges back from a moment.
   *
   * @param entering the backward value of each grip of the moment, multiplied by its own factor
   * @param future the expected loss from each grip of the moment on, with its own loss
   * @param futureBefore receives the expected loss after each grip of the moment before
   * @return the backward value of each grip of the moment before
   */
  private double[] leave(
      int m,
      double[] entering,
      double[] future,
      double[] futureBefore,
      double expected,
      double[] slopes) {
    int[] edges = lattice.edges(m);
    double[] backward = new double[futureBefore.length];
    for (int i = 0; i < backward.length; i++) {
      double before = forward[m - 1][i];
      double excessBefore = past[m - 1][i] - expected;
      int row = i * entering.length;
      for (int j = 0; j < entering.length; j++) {
        int edge = edges[row + j];
        double probability = factors[edge] * entering[j];
        backward[i] += probability;
        futureBefore[i] += probability * future[j];
        slopes[edge] += before * probability * (sign != 0 ? sign : excessBefore + future[j]);
      }
      futureBefore[i] = backward[i] > 0 ? futureBefore[i] / backward[i] : 0;
    }
    return backward;
  }
}
