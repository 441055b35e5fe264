package fingering.learning;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.function.IntConsumer;

/**
 * Goes down a smooth function of many variables, with a memory of the last steps for its curvature
 * (limited-memory BFGS; Nocedal 1980, from memory) and a step that is halved until it gains enough.
 */
final class Lbfgs {
  private static final int MEMORY = 10;
  private static final int MOST_STEPS = 300;
  private static final int MOST_HALVINGS = 40;

  /** A step that gains a smaller share of the function than this is the last. */
  private static final double SMALL_GAIN = 1e-7;

  /** What share of the promised gain a step must keep (Armijo, from memory). */
  private static final double KEPT = 1e-4;

  /** No variable moves further at once: they are logarithms. */
  private static final double FURTHEST = 1;

  /** A function with its gradient. */
  interface Function {
    /**
     * The value at a point.
     *
     * @param gradient zero at the call, the gradient after it
     */
    double at(double[] point, double[] gradient);
  }

  /** A step taken: how far the point moved, and how much the gradient changed with it. */
  private static final class Step {
    private final double[] moved;
    private final double[] changed;
    private final double along;
    private double share;

    Step(double[] moved, double[] changed) {
      this.moved = moved;
      this.changed = changed;
      along = dot(moved, changed);
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
   * Where the function is least, as far as steps down from the start find it.
   *
   * @param progress is told the number of each step, from 1
   */
  static double[] least(Function function, double[] start, IntConsumer progress) {
    Lbfgs descent = new Lbfgs(function, start);
    for (int step = 1; step <= MOST_STEPS; step++) {
      progress.accept(step);
      double before = descent.value;
      if (!descent.step()) {
        break;
      }
      if (before - descent.value < SMALL_GAIN * (1 + Math.abs(before))) {
        break;
      }
    }
    return descent.point;
  }

  /** Takes a step; false where none gains anything. */
  private boolean step() {
    double[] direction = direction();
    double slope = dot(direction, gradient);
    if (!(slope < 0)) {
      return false;
    }
    double length = Math.min(1, FURTHEST / largest(direction));
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      double[] next = plus(point, direction, length);
      double[] there = new double[point.length];
      double reached = function.at(next, there);
      if (reached <= value + KEPT * length * slope) {
        remember(next, there);
        value = reached;
        return true;
      }
      length /= 2;
    }
    return false;
  }

  /** The way down, by the curvature that the last steps showed. */
  private double[] direction() {
    double[] way = gradient.clone();
    for (Iterator<Step> late = memory.descendingIterator(); late.hasNext(); ) {
      Step step = late.next();
      step.share = dot(step.moved, way) / step.along;
      way = plus(way, step.changed, -step.share);
    }
    if (!memory.isEmpty()) {
      Step last = memory.getLast();
      way = plus(new double[way.length], way, last.along / dot(last.changed, last.changed));
    }
    for (Step step : memory) {
      way = plus(way, step.moved, step.share - dot(step.changed, way) / step.along);
    }
    return plus(new double[way.length], way, -1);
  }

  private void remember(double[] next, double[] there) {
    Step step = new Step(plus(next, point, -1), plus(there, gradient, -1));
    // Where the function bends the other way a step says nothing about its floor.
    if (step.along > 1e-12 * dot(step.changed, step.changed)) {
      memory.addLast(step);
      if (memory.size() > MEMORY) {
        memory.removeFirst();
      }
    }
    point = next;
    gradient = there;
  }

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

  private static double[] plus(double[] a, double[] b, double times) {
    double[] sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += times * b[i];
    }
    return sum;
  }
}
