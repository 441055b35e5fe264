package fingering.engraving.drawing;

import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.engraving.spacing.BarLines;
import fingering.engraving.spacing.MeasureShape;
import fingering.engraving.spacing.Placed;
import fingering.engraving.spacing.SystemShape;
import fingering.engraving.spacing.SystemShape.Places;
import fingering.music.print.PrintedMeasure.Bar;
import java.util.List;

/** Draws staff lines, bar lines, and clef, key and time signatures. */
final class StaffDrawing {
  private static final double THIN = EngravingDefaults.THIN_BAR_LINE;
  private static final double THICK = EngravingDefaults.THICK_BAR_LINE;
  private static final double GAP = EngravingDefaults.BAR_LINE_GAP;

  private final Canvas canvas;
  private final SystemShape system;

  StaffDrawing(Canvas canvas, SystemShape system) {
    this.canvas = canvas;
    this.system = system;
  }

  void draw() {
    for (int line = 0; line < 5; line++) {
      canvas.bar(
          Kind.STAFF, Style.STAFF, 0, line, system.width(), line, EngravingDefaults.STAFF_LINE);
    }
    place(canvas, system.header(), 0);
    place(canvas, system.courtesy(), 0);
    for (int i = 0; i < system.measures().size(); i++) {
      MeasureShape measure = system.measures().get(i);
      Places places = system.places().get(i);
      place(canvas, places.changes(), 0);
      place(canvas, places.clef(), 0);
      places.repeat().ifPresent(this::repeatStart);
      if (measure.closes() && !replaced(i)) {
        bar(measure.notes().printed().end(), places.bar());
      }
    }
  }

  /** Whether the start of a repeat stands for the bar line after a measure. */
  private boolean replaced(int index) {
    Bar bar = system.measures().get(index).notes().printed().end();
    return (bar == Bar.SINGLE || bar == Bar.DOUBLE)
        && index + 1 < system.places().size()
        && system.places().get(index + 1).repeat().isPresent()
        && system.places().get(index + 1).changes().isEmpty();
  }

  /** Draws shapes at their places. */
  static void place(Canvas canvas, List<Placed> signs, double dx) {
    for (Placed sign : signs) {
      canvas.glyph(sign.kind(), sign.glyph(), sign.x() + dx, sign.y(), sign.scale());
    }
  }

  private void line(double x, double thick) {
    canvas.path(
        Style.BAR,
        "M%sH%sV%sH%sz"
            .formatted(
                Canvas.point(x, -EngravingDefaults.STAFF_LINE / 2),
                Canvas.n(x + thick),
                Canvas.n(4 + EngravingDefaults.STAFF_LINE / 2),
                Canvas.n(x)));
    canvas.ink(Kind.BAR_LINE, new Box(x, 0, x + thick, 4));
  }

  private void dashed(double x, Style style) {
    canvas.path(style, "M%sV%s".formatted(Canvas.point(x, 0), Canvas.n(4)));
    canvas.ink(Kind.BAR_LINE, new Box(x - THIN / 2, 0, x + THIN / 2, 4));
  }

  private void dots(double x) {
    canvas.glyph(Kind.BAR_LINE, Glyph.REPEAT_DOT, x, 1.5);
    canvas.glyph(Kind.BAR_LINE, Glyph.REPEAT_DOT, x, 2.5);
  }

  private void bar(Bar bar, double right) {
    switch (bar) {
      case SINGLE -> line(right - THIN, THIN);
      case DASHED, DOTTED ->
          dashed(right - THIN / 2, bar == Bar.DASHED ? Style.DASHES : Style.DOTS);
      case TICK -> canvas.bar(Kind.BAR_LINE, Style.INK, right, -0.5, right, 0.5, THIN);
      case SHORT -> canvas.bar(Kind.BAR_LINE, Style.INK, right, 1, right, 3, THIN);
      case NONE -> {}
      case DOUBLE -> {
        line(right - THIN, THIN);
        line(right - 2 * THIN - GAP, THIN);
      }
      case FINAL, REPEAT -> {
        line(right - THICK, THICK);
        line(right - THICK - GAP - THIN, THIN);
        if (bar == Bar.REPEAT) {
          dots(right - BarLines.width(bar));
        }
      }
    }
  }

  private void repeatStart(double x) {
    line(x, THICK);
    line(x + THICK + GAP, THIN);
    dots(x + THICK + GAP + THIN + BarLines.DOT_GAP);
  }
}
