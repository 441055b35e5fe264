package fingering.engraving;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
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
import fingering.music.PrintedPart;
import java.util.ArrayList;
import java.util.List;

/** Draws a part as lines of music, with the fingers of plans at the notes. */
public final class Engraver {
  private Engraver() {}

  /**
   * Draws a part.
   *
   * @param passage the music
   * @param part the same as printed, with as many measures
   * @param above the plan whose fingers stand above the staff; none or one
   * @param below plans whose fingers stand below the staff
   * @param width of a line, in staff spaces
   */
  public static ImmutableList<EngravedSystem> draw(
      Passage passage,
      PrintedPart part,
      ImmutableList<Lane> above,
      ImmutableList<Lane> below,
      double width) {
    List<MeasureNotes> notes = new ArrayList<>();
    for (int i = 0; i < part.measures().size(); i++) {
      notes.add(MeasureNotes.of(passage.measures().get(i), part.measures().get(i)));
    }
    Accidentals accidentals = new Accidentals(part, passage.measures());
    ImmutableList<MeasureShape> shapes = MeasureShapes.of(notes, accidentals);
    Times times = new Times(notes);
    ImmutableList.Builder<EngravedSystem> systems = ImmutableList.builder();
    for (SystemShape shape : SystemBreaks.of(shapes, width)) {
      systems.add(system(new SystemDrawing(shape, part, times, above, below)));
    }
    return systems.build();
  }

  private static EngravedSystem system(SystemDrawing drawing) {
    SystemShape shape = drawing.shape();
    MeasureShape last = shape.measures().get(shape.measures().size() - 1);
    return new EngravedSystem(
        shape.measures().get(0).notes().measure().index(),
        last.notes().measure().index() + last.rests() - 1,
        shape.width(),
        drawing.canvas().skyline().top(),
        drawing.canvas().skyline().bottom(),
        drawing.canvas().svg(),
        ImmutableSet.copyOf(drawing.canvas().used()),
        drawing.canvas().inks());
  }
}
