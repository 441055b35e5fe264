package fingering.learning;

import com.google.common.primitives.ImmutableIntArray;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the rules find at the nodes and edges of a lattice. A bundle is the amounts of all rules at
 * one place; few bundles differ, so that each is kept, priced and counted once.
 */
final class AmountTable {
  /**
   * Costs beyond this count as this much, in natural units. Two such factors and a scale stay well
   * inside the range of a double, so that no path ever vanishes.
   */
  static final double DEAREST = 150;

  /** The bundle without any amount. */
  static final int NOTHING = 0;

  private final int[] from;
  private final int[] rules;
  private final int[] amounts;

  private AmountTable(int[] from, int[] rules, int[] amounts) {
    this.from = from;
    this.rules = rules;
    this.amounts = amounts;
  }

  /** Collects bundles and numbers them. */
  static final class Builder {
    private final Map<ImmutableIntArray, Integer> numbers = new HashMap<>();
    private final List<ImmutableIntArray> bundles = new ArrayList<>();

    Builder() {
      add(new int[0], 0);
    }

    /**
     * The number of a bundle.
     *
     * @param pairs rule and amount by turns, amounts above 0 only
     * @param length how much of the array is filled
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

  /** How many bundles there are. */
  int size() {
    return from.length - 1;
  }

  /** Whether a rule finds anything in any bundle. */
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

  /** exp(−cost) of every bundle, for these weights in natural units. */
  double[] factors(double[] weights) {
    double[] factors = new double[size()];
    for (int k = 0; k < factors.length; k++) {
      factors[k] = Math.exp(-Math.min(DEAREST, cost(k, weights)));
    }
    return factors;
  }

  /**
   * Adds to the gradient by the logarithm of each weight, for how often each bundle is met. Bundles
   * beyond the dearest cost do not change with the weights.
   */
  void addGradient(double[] met, double[] weights, double[] gradient) {
    for (int k = 0; k < met.length; k++) {
      if (met[k] == 0 || cost(k, weights) > DEAREST) {
        continue;
      }
      for (int i = from[k]; i < from[k + 1]; i++) {
        gradient[rules[i]] += met[k] * amounts[i] * weights[rules[i]];
      }
    }
  }
}
