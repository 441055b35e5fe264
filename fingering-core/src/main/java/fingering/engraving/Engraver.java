package fingering.engraving;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.engraving.EngravedSystem.MeasureSpan;
import fingering.engraving.drawing.Circled;
import fingering.engraving.drawing.Lane;
import fingering.engraving.drawing.SystemDrawing;
import fingering.engraving.drawing.Times;
import fingering.engraving.notes.Accidentals;
import fingering.engraving.notes.MeasureNotes;
import fingering.engraving.spacing.MeasureShape;
import fingering.engraving.spacing.MeasureShapes;
import fingering.engraving.spacing.SystemBreaks;
import fingering.engraving.spacing.SystemShape;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import java.util.List;

/**
 * Draws a part as lines of music, with the fingers of plans at the notes.
 *
 * @param passage the music
 * @param part the same as printed, with as many measures
 * @param above the plans whose fingers stand above the staff; usually one
 * @param below the plans whose fingers stand below the staff
 * @param circles what to circle
 */
public record Engraver(
    Passage passage,
    PrintedPart part,
    ImmutableList<Lane> above,
    ImmutableList<Lane> below,
    ImmutableList<Circled> circles) {

  /** An engraver of a part without fingers. */
  public static Engraver of(Passage passage, PrintedPart part) {
    return new Engraver(passage, part, ImmutableList.of(), ImmutableList.of(), ImmutableList.of());
  }

  /** The same with the fingers of a plan above the staff. */
  public Engraver withAbove(Lane lane) {
    return new Engraver(passage, part, ImmutableList.of(lane), below, circles);
  }

  /** The same with the fingers of plans below the staff. */
  public Engraver withBelow(List<Lane> lanes) {
    return new Engraver(passage, part, above, ImmutableList.copyOf(lanes), circles);
  }

  /** The same with rings around some things. */
  public Engraver withCircles(List<Circled> circled) {
    return new Engraver(passage, part, above, below, ImmutableList.copyOf(circled));
  }

  /**
   * Draws the part.
   *
   * @param width of a line, in staff spaces
   */
  public ImmutableList<EngravedSystem> draw(double width) {
    if (part.measures().isEmpty()) {
      return ImmutableList.of();
    }
    ImmutableList<MeasureNotes> notes = MeasureNotes.of(passage.measures(), part);
    Accidentals accidentals = new Accidentals(part, passage.measures());
    ImmutableList<MeasureShape> shapes = MeasureShapes.of(notes, accidentals);
    Times times = new Times(notes);
    ImmutableList.Builder<EngravedSystem> systems = ImmutableList.builder();
    for (SystemShape shape : SystemBreaks.of(shapes, width)) {
      systems.add(engraved(new SystemDrawing(shape, part, times, above, below, circles)));
    }
    return systems.build();
  }

  private static EngravedSystem engraved(SystemDrawing drawing) {
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
