package fingering.engraving;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.engraving.drawing.SystemDrawing;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Ink;
import fingering.engraving.spacing.MeasureShape;
import fingering.engraving.spacing.SystemShape;
import fingering.music.NoteAddress;

/**
 * One line of music, drawn.
 *
 * @param firstMeasure index of its first measure in the part
 * @param lastMeasure index of its last measure in the part
 * @param width in staff spaces
 * @param top the y of its upper edge, in staff spaces from the top line of the staff; 0 or less
 * @param bottom the y of its lower edge
 * @param measures the places of its measures
 * @param svg the elements of the picture, in tenths of a staff space
 * @param glyphs the shapes that it uses
 * @param inks everything drawn, with boxes
 * @param heads the box of the head of each note, from left to right in each measure
 */
public record EngravedSystem(
    int firstMeasure,
    int lastMeasure,
    double width,
    double top,
    double bottom,
    ImmutableList<MeasureSpan> measures,
    String svg,
    ImmutableSet<Glyph> glyphs,
    ImmutableList<Ink> inks,
    ImmutableMap<NoteAddress, Box> heads) {
  /**
   * The place of a measure in the line.
   *
   * @param index index of the measure in the part
   * @param begins whether the measure begins here; false for the rest of a divided one
   * @param left its left edge, in staff spaces
   * @param right its right edge
   */
  public record MeasureSpan(int index, boolean begins, double left, double right) {}

  /** The height in staff spaces. */
  public double height() {
    return bottom - top;
  }

  /** The line of a drawing. */
  static EngravedSystem of(SystemDrawing drawing) {
    SystemShape shape = drawing.shape();
    MeasureShape last = shape.measures().get(shape.measures().size() - 1);
    return new EngravedSystem(
        shape.measures().get(0).notes().measure().index(),
        last.notes().measure().index() + last.rests() - 1,
        shape.width(),
        drawing.canvas().skyline().top(),
        drawing.canvas().skyline().bottom(),
        spans(shape),
        drawing.canvas().svg(),
        ImmutableSet.copyOf(drawing.canvas().used()),
        drawing.canvas().inks(),
        drawing.heads());
  }

  private static ImmutableList<MeasureSpan> spans(SystemShape shape) {
    ImmutableList.Builder<MeasureSpan> spans = ImmutableList.builder();
    for (int i = 0; i < shape.measures().size(); i++) {
      MeasureShape measure = shape.measures().get(i);
      double left = i == 0 ? 0 : shape.places().get(i).left();
      for (int rest = 0; rest < measure.rests(); rest++) {
        spans.add(
            new MeasureSpan(
                measure.notes().measure().index() + rest,
                measure.opens(),
                left,
                shape.places().get(i).bar()));
      }
    }
    return spans.build();
  }
}
