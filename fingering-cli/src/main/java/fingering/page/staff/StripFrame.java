package fingering.page.staff;

import fingering.music.Measure;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.Ending;
import fingering.music.print.PrintedPart.Wedge;
import fingering.page.svg.Svg;
import fingering.page.svg.TextWidth;
import java.util.List;

/** Draws everything around the notes: staff, bar lines, clef and key, text and dynamics. */
final class StripFrame {
  /**
   * The vertical places of the rows.
   *
   * @param staff the y of the top line of the staff
   * @param endings the y of the brackets over endings of repeats
   * @param words the lower edge of the words
   * @param dynamics the upper edge of the dynamics
   * @param height the total height
   */
  record Rows(double staff, double endings, double words, double dynamics, int height) {}

  private static final double WEDGE = 4;
  private static final double HOOK = 10;

  private final Rows rows;
  private final PrintedPart part;
  private final List<StripPiece> spans;
  private final double margin;

  StripFrame(Rows rows, PrintedPart part, List<StripPiece> spans, double margin) {
    this.rows = rows;
    this.part = part;
    this.spans = spans;
    this.margin = margin;
  }

  private void staff(Svg svg, double from, double to) {
    StringBuilder lines = new StringBuilder();
    for (int line = 0; line < 5; line++) {
      lines
          .append("M")
          .append(Svg.point(from, rows.staff() + line * Glyphs.SPACE))
          .append("H")
          .append(Svg.number(to));
    }
    svg.path("staff", lines.toString());
  }

  /** Draws staff, clef and key to the left of 0. */
  void head(Svg svg, Clef clef, int fifths) {
    staff(svg, -margin, 0);
    svg.raw(
        "<g transform=\"translate(%s,%s)\">"
            .formatted(Svg.number(-margin), Svg.number(rows.staff())));
    Signature.clef(svg, clef, 13);
    Signature.key(svg, clef, fifths, 0, 29);
    svg.raw("</g>");
  }

  /** Draws the background of a piece, which hides the head of the next one, and its staff. */
  void background(Svg svg) {
    svg.raw("<use href=\"#g-paper\"/>").raw("<use href=\"#g-staff\" y=\"");
    svg.raw(Svg.number(rows.staff())).raw("\"/>");
  }

  /** Draws the measure number, the bar lines, and changes in the next measure. */
  void bars(Svg svg, int index) {
    StripPiece span = spans.get(index);
    double top = rows.staff();
    double bottom = top + Extents.STAFF;
    if (span.first) {
      svg.text("number", 2, 11, span.measure.number());
      if (!span.measure.rehearsal().isEmpty()) {
        double x = 8 + TextWidth.of(span.measure.number(), StaffStyle.LABEL);
        double width = TextWidth.bold(span.measure.rehearsal(), StaffStyle.WORDS) + 6;
        svg.rect("o", x, 1, width, 13).text("rehearsal", x + 3, 11.5, span.measure.rehearsal());
      }
      if (span.printed.repeatStart()) {
        svg.line("thick", 3, top, 3, bottom).line("bar", 7, top, 7, bottom);
        dots(svg, 11, top);
      }
    }
    if (index == 0) {
      double x = 4 + (span.printed.repeatStart() ? 12 : 0);
      meter(svg, span.measure, x);
    }
    if (span.last) {
      end(svg, index, span, top, bottom);
    }
  }

  private static void dots(Svg svg, double x, double top) {
    svg.circle("ink", x, top + 12, 1.6).circle("ink", x, top + 20, 1.6);
  }

  private void meter(Svg svg, Measure measure, double x) {
    double half = Signature.meterWidth(measure.beats(), measure.beatType()) / 2;
    svg.raw("<g transform=\"translate(0,%s)\">".formatted(Svg.number(rows.staff())));
    Signature.meter(svg, measure.beats(), measure.beatType(), x + half);
    svg.raw("</g>");
  }

  private void end(Svg svg, int index, StripPiece span, double top, double bottom) {
    double bar = span.bar;
    switch (span.printed.end()) {
      case NONE -> {}
      case SINGLE, DASHED, DOTTED, TICK, SHORT ->
          svg.line("bar", bar - 0.7, top, bar - 0.7, bottom);
      case DOUBLE ->
          svg.line("bar", bar - 4, top, bar - 4, bottom)
              .line("bar", bar - 0.7, top, bar - 0.7, bottom);
      default -> {
        svg.line("bar", bar - 6, top, bar - 6, bottom)
            .line("thick", bar - 1.8, top, bar - 1.8, bottom);
        if (span.printed.end() == Bar.REPEAT) {
          dots(svg, bar - 10, top);
        }
      }
    }
    if (index + 1 >= spans.size()) {
      return;
    }
    StripPiece next = spans.get(index + 1);
    Clef before = span.source.lastClef;
    Clef after = next.printed.clef();
    if (!before.equals(after)) {
      Signature.smallClef(svg, after, bar - 13, top);
    }
    double x = bar + 4;
    if (next.measure.fifths() != span.lastKey()) {
      svg.raw("<g transform=\"translate(0,%s)\">".formatted(Svg.number(top)));
      Signature.key(svg, after, next.measure.fifths(), span.lastKey(), x);
      svg.raw("</g>");
      x += Signature.keyWidth(next.measure.fifths(), span.lastKey()) + 4;
    }
    if (Spacing.meterChanges(span.measure, next.measure)) {
      meter(svg, next.measure, x - 2);
    }
  }

  /** Draws the section of an ending bracket that is over a piece. */
  private void ending(Svg svg, StripPiece span, Ending ending) {
    int measure = span.measure.index();
    if (measure < ending.first() || measure > ending.last()) {
      return;
    }
    boolean begins = measure == ending.first() && span.first;
    boolean ends = measure == ending.last() && span.last;
    double y = rows.endings();
    double right = ends ? span.bar - 3 : span.width;
    StringBuilder path = new StringBuilder();
    if (begins) {
      path.append('M').append(Svg.point(3, y + HOOK)).append('V').append(Svg.number(y));
      svg.text("ending", 7, y + 10, ending.number());
    } else {
      path.append('M').append(Svg.point(0, y));
    }
    path.append('H').append(Svg.number(right));
    if (ends && ending.closed()) {
      path.append('v').append(Svg.number(HOOK));
    }
    svg.path("bracket", path.toString());
  }

  /** Draws text, dynamics and hairpins. */
  void texts(Svg svg, int index) {
    StripPiece span = spans.get(index);
    part.endings().forEach(ending -> ending(svg, span, ending));
    for (TextRow.Placed text : span.words) {
      double y = rows.words() - 4 - TextRow.LINE * (text.lines().size() - 1);
      for (String line : text.lines()) {
        svg.text("words", text.x(), y, line);
        y += TextRow.LINE;
      }
    }
    for (TextRow.Placed text : span.dynamics) {
      svg.text("dynamic", text.x(), rows.dynamics() + 12, String.join(" ", text.lines()));
    }
    double start = span.measure.start().doubleValue();
    double from = start + span.from().doubleValue();
    double to = start + span.to(spans, index).doubleValue();
    for (Wedge wedge : part.wedges()) {
      if (span.touches(wedge, from, to)) {
        wedge(svg, span, wedge, from, to);
      }
    }
  }

  private void wedge(Svg svg, StripPiece span, Wedge wedge, double from, double to) {
    double begin = wedge.start().doubleValue();
    double end = wedge.end().doubleValue();
    double start = span.measure.start().doubleValue();
    double x1 = begin <= from && begin < from ? 0 : span.x(begin - start);
    double x2 = end > to ? span.width : end == to ? span.width - 8 : span.x(end - start) - 5;
    for (TextRow.Placed text : span.dynamics) {
      if (text.x() <= x1 + 2 && text.x() + text.width() > x1) {
        x1 = text.x() + text.width() + 2;
      } else if (text.x() > x1 && text.x() < x2 + 2) {
        x2 = text.x() - 3;
      }
    }
    if (x2 - x1 < 4) {
      return;
    }
    double open1 = WEDGE * (Math.max(from, begin) - begin) / (end - begin);
    double open2 = WEDGE * (Math.min(to, end) - begin) / (end - begin);
    double left = wedge.louder() ? open1 : WEDGE - open1;
    double right = wedge.louder() ? open2 : WEDGE - open2;
    double y = rows.dynamics() + 8;
    svg.path(
        "curve",
        "M%sL%sM%sL%s"
            .formatted(
                Svg.point(x1, y - left),
                Svg.point(x2, y - right),
                Svg.point(x1, y + left),
                Svg.point(x2, y + right)));
  }
}
