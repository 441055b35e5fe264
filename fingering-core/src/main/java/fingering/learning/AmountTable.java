package fingering.learning;

import com.google.common.primitives.ImmutableIntArray;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The amounts that the rules charge at the nodes and edges of a lattice. The amounts of all rules
 * at one node or edge are a bundle. Few bundles are different, so each is stored, and its cost
 * computed, only once.
 */
final class AmountTable {
  /**
   * The upper bound of a cost, in natural units; higher costs are reduced to it. The product of two
   * such factors and a scaling factor does not underflow a double, so no path gets probability 0.
   */
  static final double MAX_COST = 150;

  /** The number of the bundle without any amount. */
  static final int EMPTY = 0;

  private final int[] from;
  private final int[] rules;
  private final int[] amounts;

  private AmountTable(int[] from, int[] rules, int[] amounts) {
    this.from = from;
    this.rules = rules;
    this.amounts = amounts;
  }

  /** Collects bundles and gives them numbers. */
  static final class Builder {
    private final Map<ImmutableIntArray, Integer> numbers = new HashMap<>();
    private final List<ImmutableIntArray> bundles = new ArrayList<>();

    Builder() {
      add(new int[0], 0);
    }

    /**
     * Adds a bundle, if it is new, and returns its number.
     *
     * @param pairs the index of a rule and its amount, alternating; only amounts above 0
     * @param length the number of array elements in use
     */
    int add(int[] pairs, int length) {
      ImmutableIntArray bundle = ImmutableIntArray.copyOf(Arrays.copyOf(pairs, length));
      int number = numbers.computeIfAbsent(bundle, b -> bundles.size());
      if (number == bundles.size()) {
        bundles.add(bundle);
      }
      return number;
    }

    AmountTable build() {
      int[] from = new int[bundles.size() + 1];
      for (int k = 0; k < bundles.size(); k++) {
        from[k + 1] = from[k] + bundles.get(k).length() / 2;
      }
      int[] rules = new int[from[bundles.size()]];
      int[] amounts = new int[rules.length];
      for (int k = 0; k < bundles.size(); k++) {
        ImmutableIntArray bundle = bundles.get(k);
        for (int i = from[k]; i < from[k + 1]; i++) {
          rules[i] = bundle.get(2 * (i - from[k]));
          amounts[i] = bundle.get(2 * (i - from[k]) + 1);
        }
      }
      return new AmountTable(from, rules, amounts);
    }
  }

  /** The number of bundles. */
  int size() {
    return from.length - 1;
  }

  /** Whether a rule has an amount in any bundle. */
  boolean occurs(int rule) {
    return Arrays.stream(rules).anyMatch(r -> r == rule);
  }

  private double cost(int bundle, double[] weights) {
    double cost = 0;
    for (int i = from[bundle]; i < from[bundle + 1]; i++) {
      cost += amounts[i] * weights[rules[i]];
    }
    return cost;
  }

  /** The factor exp(−cost) of each bundle, for weights in natural units. */
  double[] factors(double[] weights) {
    double[] factors = new double[size()];
    for (int k = 0; k < factors.length; k++) {
      factors[k] = Math.exp(-Math.min(MAX_COST, cost(k, weights)));
    }
    return factors;
  }

  /**
   * Adds derivatives by the logarithm of each weight to a gradient. A bundle at the upper bound of
   * the cost does not depend on the weights.
   *
   * @param byCost the derivative by the cost of each bundle
   */
  void addGradient(double[] byCost, double[] weights, double[] gradient) {
    for (int k = 0; k < byCost.length; k++) {
      if (byCost[k] == 0 || cost(k, weights) > MAX_COST) {
        continue;
      }
      for (int i = from[k]; i < from[k + 1]; i++) {
        gradient[rules[i]] += byCost[k] * amounts[i] * weights[rules[i]];
      }
    }
  }
}
