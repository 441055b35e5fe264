package fingering.engraving.ink;

import fingering.engraving.glyph.Box;
import java.util.Arrays;

/**
 * How far the drawn things of a system reach above and below its staff, from left to right. New
 * things are placed outside it.
 */
public final class Skyline {
  /** Samples in a staff space. */
  private static final int SAMPLES = 8;

  private final double[] top;
  private final double[] bottom;

  /**
   * A staff of five lines with nothing around it.
   *
   * @param width in staff spaces
   */
  public Skyline(double width) {
    this(width, 0, 4);
  }

  private Skyline(double width, double highest, double lowest) {
    int size = (int) Math.ceil(width * SAMPLES) + 1;
    top = new double[size];
    bottom = new double[size];
    Arrays.fill(top, highest);
    Arrays.fill(bottom, lowest);
  }

  /**
   * Nothing at all, without a staff. Where nothing is added the top is positive infinity, and the
   * bottom negative.
   *
   * @param width in staff spaces
   */
  static Skyline empty(double width) {
    return new Skyline(width, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
  }

  private int index(double x) {
    return Math.max(0, Math.min(top.length - 1, (int) Math.floor(x * SAMPLES)));
  }

  /** Adds the box of a drawn thing. */
  public void add(Box box) {
    int last = index(box.right());
    for (int i = index(box.left()); i <= last; i++) {
      top[i] = Math.min(top[i], box.top());
      bottom[i] = Math.max(bottom[i], box.bottom());
    }
  }

  /** The smallest y between two places; with a staff, at most that of its top line. */
  public double top(double left, double right) {
    double least = Double.POSITIVE_INFINITY;
    int last = index(right);
    for (int i = index(left); i <= last; i++) {
      least = Math.min(least, top[i]);
    }
    return least;
  }

  /** The greatest y between two places; with a staff, at least that of its bottom line. */
  public double bottom(double left, double right) {
    double most = Double.NEGATIVE_INFINITY;
    int last = index(right);
    for (int i = index(left); i <= last; i++) {
      most = Math.max(most, bottom[i]);
    }
    return most;
  }

  /** The smallest y of all. */
  public double top() {
    return Arrays.stream(top).min().orElse(0);
  }

  /** The greatest y of all. */
  public double bottom() {
    return Arrays.stream(bottom).max().orElse(4);
  }
}
