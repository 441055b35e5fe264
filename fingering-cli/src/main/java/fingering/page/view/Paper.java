package fingering.page.view;

/** Sizes of paper (ISO 216 and ANSI/ASME Y14.1). */
public enum Paper {
  A4("A4", 210, 297),
  LETTER("letter", 215.9, 279.4);

  /** White at each edge, in millimetres; printers do not reach the edge. */
  public static final double MARGIN = 10;

  private final String style;
  private final double width;
  private final double height;

  Paper(String style, double width, double height) {
    this.style = style;
    this.width = width;
    this.height = height;
  }

  /** Its name in a style sheet. */
  public String style() {
    return style;
  }

  /** The width between the margins, in millimetres. */
  public double width() {
    return width - 2 * MARGIN;
  }

  /** The height between the margins, in millimetres. */
  public double height() {
    return height - 2 * MARGIN;
  }
}
