package fingering.learning;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.function.IntConsumer;

/**
 * Minimizes a smooth function of many variables with L-BFGS (Nocedal 1980, from memory) and a
 * backtracking line search that halves the step until it meets the Armijo condition.
 */
final class Lbfgs {
  /** The number of steps from which the curvature is estimated. */
  private static final int MEMORY = 10;

  private static final int MAX_STEPS = 300;
  private static final int MAX_HALVINGS = 40;

  /** The relative decrease of the function below which the search ends. */
  private static final double SMALL_DECREASE = 1e-7;

  /** The constant of the Armijo condition (from memory). */
  private static final double ARMIJO = 1e-4;

  /** The largest first step of a variable; the variables are logarithms. */
  private static final double MAX_STEP = 1;

  /** A function with its gradient. */
  interface Function {
    /**
     * The value at a point.
     *
     * @param gradient receives the gradient; contains zeros at the call
     */
    double at(double[] point, double[] gradient);
  }

  /** A past step: the changes s of the point and y of the gradient, in the usual notation. */
  private static final class Step {
    private final double[] pointChange;
    private final double[] gradientChange;

    /** The curvature sᵀy. */
    private final double curvature;

    /** The coefficient α of the two-loop recursion. */
    private double coefficient;

    Step(double[] pointChange, double[] gradientChange) {
      this.pointChange = pointChange;
      this.gradientChange = gradientChange;
      curvature = dot(pointChange, gradientChange);
    }
  }

  private final Function function;
  private final Deque<Step> memory = new ArrayDeque<>();
  private double[] point;
  private double[] gradient;
  private double value;

  private Lbfgs(Function function, double[] start) {
    this.function = function;
    point = start.clone();
    gradient = new double[point.length];
    value = function.at(point, gradient);
  }

  /**
   * A local minimum of a function, found from a start point.
   *
   * @param progress receives the number of each step, from 1, before the step
   */
  static double[] minimize(Function function, double[] start, IntConsumer progress) {
    Lbfgs search = new Lbfgs(function, start);
    for (int step = 1; step <= MAX_STEPS; step++) {
      progress.accept(step);
      double before = search.value;
      if (!search.step()) {
        break;
      }
      if (before - search.value < SMALL_DECREASE * (1 + Math.abs(before))) {
        break;
      }
    }
    return search.point;
  }

  /** Takes one step; returns false if none decreases the function enough. */
  private boolean step() {
    double[] direction = direction();
    double slope = dot(direction, gradient);
    if (!(slope < 0)) {
      return false;
    }
    double length = Math.min(1, MAX_STEP / largest(direction));
    for (int halving = 0; halving < MAX_HALVINGS; halving++) {
      double[] newPoint = plus(point, direction, length);
      double[] newGradient = new double[point.length];
      double newValue = function.at(newPoint, newGradient);
      if (newValue <= value + ARMIJO * length * slope) {
        accept(newPoint, newGradient);
        value = newValue;
        return true;
      }
      length /= 2;
    }
    return false;
  }

  /** The descent direction, by the two-loop recursion. */
  private double[] direction() {
    double[] result = gradient.clone();
    for (Iterator<Step> steps = memory.descendingIterator(); steps.hasNext(); ) {
      Step step = steps.next();
      step.coefficient = dot(step.pointChange, result) / step.curvature;
      result = plus(result, step.gradientChange, -step.coefficient);
    }
    if (!memory.isEmpty()) {
      Step last = memory.getLast();
      double scale = last.curvature / dot(last.gradientChange, last.gradientChange);
      result = plus(new double[result.length], result, scale);
    }
    for (Step step : memory) {
      double correction = dot(step.gradientChange, result) / step.curvature;
      result = plus(result, step.pointChange, step.coefficient - correction);
    }
    return plus(new double[result.length], result, -1);
  }

  private void accept(double[] newPoint, double[] newGradient) {
    Step step = new Step(plus(newPoint, point, -1), plus(newGradient, gradient, -1));
    // Steps without positive curvature would make the direction unusable.
    if (step.curvature > 1e-12 * dot(step.gradientChange, step.gradientChange)) {
      memory.addLast(step);
      if (memory.size() > MEMORY) {
        memory.removeFirst();
      }
    }
    point = newPoint;
    gradient = newGradient;
  }

  /** The largest absolute value of a vector. */
  private static double largest(double[] vector) {
    double largest = 0;
    for (double entry : vector) {
      largest = Math.max(largest, Math.abs(entry));
    }
    return largest;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** The vector a + factor · b. */
  private static double[] plus(double[] a, double[] b, double factor) {
    double[] sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * b[i];
    }
    return sum;
  }
}
