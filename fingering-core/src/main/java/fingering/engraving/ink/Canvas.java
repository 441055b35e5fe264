package fingering.engraving.ink;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.glyph.GlyphRow;
import fingering.svg.Svg;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Collects what is drawn in one system: elements of the picture, the box around each thing, and the
 * skyline. Coordinates are in staff spaces, y = 0 at the top line of the staff.
 */
public final class Canvas {
  /** Units of the picture in a staff space. */
  public static final double UNIT = 10;

  /** Lines of one thickness each, which are strokes; others are filled. */
  private static final ImmutableMap<Kind, Style> STROKED =
      ImmutableMap.of(Kind.STAFF, Style.STAFF, Kind.STEM, Style.STEM, Kind.LEDGER, Style.LEDGER);

  /** The lines of the staff, which lie behind everything. */
  private final Svg behind = new Svg();

  private final Svg svg = new Svg();

  /** Path commands by style that are not drawn yet. */
  private final Map<Style, StringBuilder> paths = new LinkedHashMap<>();

  private final Skyline skyline;
  private final Skyline notes;
  private final List<Ink> inks = new ArrayList<>();
  private double time = Double.NaN;
  private final Set<Glyph> used = EnumSet.noneOf(Glyph.class);

  /**
   * An empty canvas.
   *
   * @param width of the system, in staff spaces
   */
  public Canvas(double width) {
    skyline = new Skyline(width);
    notes = Skyline.empty(width);
  }

  /** How far notes and signs reach, also within the staff: its lines do not count. */
  public Skyline notes() {
    return notes;
  }

  /** How far what is drawn so far reaches. */
  public Skyline skyline() {
    return skyline;
  }

  /** All drawn things. */
  public ImmutableList<Ink> inks() {
    return ImmutableList.copyOf(inks);
  }

  /** The shapes that were used. */
  public Set<Glyph> used() {
    return used;
  }

  /** Sets the time that everything drawn from now on belongs to; NaN for no time. */
  public void at(double newTime) {
    time = newTime;
  }

  /** The elements of the picture. */
  public String svg() {
    flush();
    return behind + svg.toString();
  }

  /** Records a thing that is drawn, without drawing it. */
  public void ink(Kind kind, Box box) {
    inks.add(new Ink(kind, box, time));
    skyline.add(box);
    if (kind != Kind.STAFF && kind != Kind.BAR_LINE && kind != Kind.LEDGER) {
      notes.add(box);
    }
  }

  /** Draws a shape with its origin at a place. */
  public Box glyph(Kind kind, Glyph glyph, double x, double y) {
    return glyph(kind, glyph, x, y, 1);
  }

  /** Draws a shape with its origin at a place, larger by a factor. */
  public Box glyph(Kind kind, Glyph glyph, double x, double y, double scale) {
    used.add(glyph);
    svg.use(glyph.id(), x * UNIT, y * UNIT, scale);
    Box box = glyph.box().scaled(scale).moved(x, y);
    ink(kind, box);
    return box;
  }

  /** Draws shapes in a row, which count as one thing, from its left edge. */
  public Box row(Kind kind, GlyphRow row, double left, double y, double scale) {
    double x = left - row.box().left() * scale;
    for (GlyphRow.Placed placed : row.glyphs()) {
      used.add(placed.glyph());
      svg.use(placed.glyph().id(), (x + placed.x() * scale) * UNIT, y * UNIT, scale);
    }
    Box box = row.box().scaled(scale).moved(x, y);
    ink(kind, box);
    return box;
  }

  /** Draws a line of some thickness, horizontal or vertical. */
  public void bar(
      Kind kind, Style style, double x1, double y1, double x2, double y2, double thick) {
    boolean level = y1 == y2;
    double dx = level ? 0 : thick / 2;
    double dy = level ? thick / 2 : 0;
    Box box =
        new Box(
            Math.min(x1, x2) - dx,
            Math.min(y1, y2) - dy,
            Math.max(x1, x2) + dx,
            Math.max(y1, y2) + dy);
    if (STROKED.containsKey(kind)) {
      path(STROKED.get(kind), "M" + point(x1, y1) + (level ? "H" + n(x2) : "V" + n(y2)));
    } else {
      path(
          style,
          "M"
              + point(box.left(), box.top())
              + "H"
              + n(box.right())
              + "V"
              + n(box.bottom())
              + "H"
              + n(box.left())
              + "z");
    }
    ink(kind, box);
  }

  /** Draws a filled outline that is recorded by boxes of the caller's. */
  public void path(Style style, String commands) {
    paths.computeIfAbsent(style, one -> new StringBuilder()).append(commands);
  }

  /** Draws all paths of a style as one: long music has thousands. */
  private void flush() {
    paths.forEach(
        (style, commands) ->
            (style == Style.STAFF ? behind : svg).path(style.css(), commands.toString()));
    paths.clear();
  }

  /**
   * Draws a text on a baseline.
   *
   * @param width the width of the text, in staff spaces
   * @param size the height of its letters above the baseline, in staff spaces
   * @param left its left edge
   */
  public Box text(
      Kind kind,
      Style style,
      String text,
      double left,
      double baseline,
      double width,
      double size) {
    svg.text(style.css(), left * UNIT, baseline * UNIT, width * UNIT, text);
    Box box = new Box(left, baseline - size, left + width, baseline + size * 0.3);
    ink(kind, box);
    return box;
  }

  /** Adds elements that are SVG already. */
  public void raw(String elements) {
    flush();
    svg.raw(elements);
  }

  /** A number of units of the picture. */
  public static String n(double spaces) {
    return Svg.number(spaces * UNIT);
  }

  /** A point in path syntax. */
  public static String point(double x, double y) {
    return Svg.point(x * UNIT, y * UNIT);
  }
}
