package fingering.learning;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Sums over all paths of a lattice by passing forward and backward, exactly, in time linear in
 * edges. Sums are kept as numbers, not logarithms, and scaled to 1 at every moment.
 */
final class ForwardBackward {
  private final Lattice lattice;
  private final double[] factors;
  private final int[][] open;
  private final double[][] forward;
  private final double[] scale;

  private ForwardBackward(Lattice lattice, double[] factors, int[][] open) {
    this.lattice = lattice;
    this.factors = factors;
    this.open = open;
    forward = new double[open.length][];
    scale = new double[open.length];
  }

  /** Every grip of every moment, as indices. */
  static int[][] everything(Lattice lattice) {
    return IntStream.range(0, lattice.moments())
        .mapToObj(m -> IntStream.range(0, lattice.nodes(m).length).toArray())
        .toArray(int[][]::new);
  }

  /**
   * The logarithm of the sum of exp(−cost) over the paths through the open grips.
   *
   * @param factors exp(−cost) of each bundle
   * @param open the indices of the grips that are open at each moment, at least one
   * @param share what each path's probability counts
   * @param met is added, for each bundle, how often it is expected on a path, times the share
   */
  static double sum(Lattice lattice, double[] factors, int[][] open, double share, double[] met) {
    ForwardBackward passes = new ForwardBackward(lattice, factors, open);
    double logarithm = passes.forward();
    passes.backward(share, met);
    return logarithm;
  }

  private double forward() {
    double logarithm = 0;
    for (int m = 0; m < open.length; m++) {
      forward[m] = new double[open[m].length];
      if (m == 0) {
        Arrays.fill(forward[m], 1);
      } else {
        arrive(m);
      }
      for (int a = 0; a < open[m].length; a++) {
        forward[m][a] *= factors[lattice.nodes(m)[open[m][a]]];
        scale[m] += forward[m][a];
      }
      for (int a = 0; a < open[m].length; a++) {
        forward[m][a] /= scale[m];
      }
      logarithm += Math.log(scale[m]);
    }
    return logarithm;
  }

  private void arrive(int m) {
    int[] edges = lattice.edges(m);
    int[] now = open[m];
    double[] here = forward[m];
    for (int b = 0; b < open[m - 1].length; b++) {
      double left = forward[m - 1][b];
      int row = open[m - 1][b] * lattice.nodes(m).length;
      for (int a = 0; a < now.length; a++) {
        here[a] += left * factors[edges[row + now[a]]];
      }
    }
  }

  private void backward(double share, double[] met) {
    double[] beyond = new double[open[open.length - 1].length];
    Arrays.fill(beyond, 1);
    for (int m = open.length - 1; m >= 0; m--) {
      int[] nodes = lattice.nodes(m);
      double[] entering = new double[beyond.length];
      for (int a = 0; a < beyond.length; a++) {
        met[nodes[open[m][a]]] += share * forward[m][a] * beyond[a];
        entering[a] = factors[nodes[open[m][a]]] * beyond[a] / scale[m];
      }
      beyond = m == 0 ? beyond : leave(m, entering, share, met);
    }
  }

  private double[] leave(int m, double[] entering, double share, double[] met) {
    int[] edges = lattice.edges(m);
    int[] now = open[m];
    double[] beyond = new double[open[m - 1].length];
    for (int b = 0; b < beyond.length; b++) {
      double left = share * forward[m - 1][b];
      int row = open[m - 1][b] * lattice.nodes(m).length;
      for (int a = 0; a < now.length; a++) {
        int edge = edges[row + now[a]];
        double way = factors[edge] * entering[a];
        beyond[b] += way;
        met[edge] += left * way;
      }
    }
    return beyond;
  }
}
