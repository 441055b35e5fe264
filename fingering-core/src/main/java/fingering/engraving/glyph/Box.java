package fingering.engraving.glyph;

/**
 * A rectangle around something drawn, in staff spaces; y grows downward.
 *
 * @param left the smallest x
 * @param top the smallest y
 * @param right the greatest x, at least {@code left}
 * @param bottom the greatest y, at least {@code top}
 */
public record Box(double left, double top, double right, double bottom) {
  /** Checks the order of the edges. */
  public Box {
    if (!(left <= right && top <= bottom)) {
      throw new IllegalArgumentException(
          "no box from " + left + "," + top + " to " + right + "," + bottom);
    }
  }

  /** The distance from left to right. */
  public double width() {
    return right - left;
  }

  /** The distance from top to bottom. */
  public double height() {
    return bottom - top;
  }

  /** This box, moved to the right and down. */
  public Box moved(double dx, double dy) {
    return new Box(left + dx, top + dy, right + dx, bottom + dy);
  }

  /** This box for a shape drawn larger by a factor above 0, about the origin. */
  public Box scaled(double factor) {
    return new Box(left * factor, top * factor, right * factor, bottom * factor);
  }

  /** The smallest box around this one and another. */
  public Box union(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** Whether the two share more than an edge. */
  public boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }
}
