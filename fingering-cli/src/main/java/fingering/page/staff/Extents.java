package fingering.page.staff;

/** The vertical extent of a drawing; the top line of the staff is at 0, the lowest at 32. */
final class Extents {
  /** The y of the lowest line. */
  static final double STAFF = 4 * Glyphs.SPACE;

  private double top = -16;
  private double bottom = STAFF + 14;

  /** Includes a vertical range. */
  void add(double from, double to) {
    top = Math.min(top, Math.min(from, to));
    bottom = Math.max(bottom, Math.max(from, to));
  }

  double top() {
    return top;
  }

  double bottom() {
    return bottom;
  }
}
