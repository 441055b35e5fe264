package fingering.learning;

import java.util.Arrays;

/**
 * Means over all paths of a lattice by passing forward and backward, exactly, in time linear in
 * edges. Sums are kept as numbers, not logarithms, and scaled to 1 at every moment.
 */
final class ForwardBackward {
  private final Lattice lattice;
  private final double[] factors;
  private final double[][] losses;

  /** The probability of the grips of each moment as far as the moments up to it tell. */
  private final double[][] reached;

  /** The loss that is expected up to each grip of each moment, its own with it. */
  private final double[][] past;

  private final double[] scale;

  private ForwardBackward(Lattice lattice, double[] factors, double[][] losses) {
    this.lattice = lattice;
    this.factors = factors;
    this.losses = losses;
    reached = new double[lattice.moments()][];
    past = new double[lattice.moments()][];
    scale = new double[lattice.moments()];
  }

  /**
   * The loss that is expected of a path, when each is as probable as exp(−cost).
   *
   * @param factors exp(−cost) of each bundle
   * @param losses the loss of each grip of each moment
   * @param slopes is added, for each bundle, how much the loss expected falls when the bundle gets
   *     dearer: the covariance of the loss and of how often the bundle is met
   */
  static double expected(Lattice lattice, double[] factors, double[][] losses, double[] slopes) {
    ForwardBackward passes = new ForwardBackward(lattice, factors, losses);
    double expected = passes.forward();
    passes.backward(expected, slopes);
    return expected;
  }

  private double forward() {
    int last = lattice.moments() - 1;
    for (int m = 0; m <= last; m++) {
      int[] nodes = lattice.nodes(m);
      reached[m] = new double[nodes.length];
      past[m] = new double[nodes.length];
      if (m == 0) {
        Arrays.fill(reached[m], 1);
      } else {
        arrive(m);
      }
      for (int j = 0; j < nodes.length; j++) {
        past[m][j] += losses[m][j];
        reached[m][j] *= factors[nodes[j]];
        scale[m] += reached[m][j];
      }
      for (int j = 0; j < nodes.length; j++) {
        reached[m][j] /= scale[m];
      }
    }
    double expected = 0;
    for (int j = 0; j < reached[last].length; j++) {
      expected += reached[last][j] * past[last][j];
    }
    return expected;
  }

  private void arrive(int m) {
    int[] edges = lattice.edges(m);
    double[] here = reached[m];
    double[] loss = past[m];
    for (int i = 0; i < reached[m - 1].length; i++) {
      double left = reached[m - 1][i];
      double before = past[m - 1][i];
      int row = i * here.length;
      for (int j = 0; j < here.length; j++) {
        double way = left * factors[edges[row + j]];
        here[j] += way;
        loss[j] += way * before;
      }
    }
    for (int j = 0; j < here.length; j++) {
      loss[j] = here[j] > 0 ? loss[j] / here[j] : 0;
    }
  }

  private void backward(double expected, double[] slopes) {
    double[] beyond = new double[reached[lattice.moments() - 1].length];
    Arrays.fill(beyond, 1);
    double[] future = new double[beyond.length];
    for (int m = lattice.moments() - 1; m >= 0; m--) {
      int[] nodes = lattice.nodes(m);
      double[] entering = new double[beyond.length];
      for (int j = 0; j < beyond.length; j++) {
        double probability = reached[m][j] * beyond[j];
        slopes[nodes[j]] += probability * (past[m][j] + future[j] - expected);
        entering[j] = factors[nodes[j]] * beyond[j] / scale[m];
        future[j] += losses[m][j];
      }
      if (m > 0) {
        double[] sooner = new double[reached[m - 1].length];
        beyond = leave(m, entering, future, sooner, expected, slopes);
        future = sooner;
      }
    }
  }

  /**
   * From the grips of a moment back to those before it.
   *
   * @param entering what lies behind each grip now, with the factor of the grip
   * @param future the loss expected from each grip now on, its own with it
   * @param sooner is set the loss expected after each grip before
   * @return what lies behind each grip before
   */
  private double[] leave(
      int m,
      double[] entering,
      double[] future,
      double[] sooner,
      double expected,
      double[] slopes) {
    int[] edges = lattice.edges(m);
    double[] beyond = new double[sooner.length];
    for (int i = 0; i < beyond.length; i++) {
      double left = reached[m - 1][i];
      double before = past[m - 1][i] - expected;
      int row = i * entering.length;
      for (int j = 0; j < entering.length; j++) {
        int edge = edges[row + j];
        double way = factors[edge] * entering[j];
        beyond[i] += way;
        sooner[i] += way * future[j];
        slopes[edge] += left * way * (before + future[j]);
      }
      sooner[i] = beyond[i] > 0 ? sooner[i] / beyond[i] : 0;
    }
    return beyond;
  }
}
