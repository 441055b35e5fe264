package fingering.engraving;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.engraving.drawing.Circled;
import fingering.engraving.drawing.Lane;
import fingering.engraving.drawing.SystemDrawing;
import fingering.engraving.drawing.Times;
import fingering.engraving.notes.Accidentals;
import fingering.engraving.notes.MeasureNotes;
import fingering.engraving.spacing.MeasureShapes;
import fingering.engraving.spacing.SystemBreaks;
import fingering.engraving.spacing.SystemShape;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;

/**
 * The lines of a part at a width: which measures stand in which line, and where their notes stand.
 * Fingers do not change that, so music whose plan changes is laid out once and drawn often.
 * Immutable.
 */
public final class LineLayout {
  private final PrintedPart part;
  private final Times times;
  private final ImmutableList<SystemShape> shapes;

  private LineLayout(PrintedPart part, Times times, ImmutableList<SystemShape> shapes) {
    this.part = part;
    this.times = times;
    this.shapes = shapes;
  }

  /**
   * Lays out a part.
   *
   * @param passage the music
   * @param part the same as printed, with as many measures
   * @param width of a line, in staff spaces
   */
  public static LineLayout of(Passage passage, PrintedPart part, double width) {
    ImmutableList<MeasureNotes> notes = MeasureNotes.of(passage.measures(), part);
    return new LineLayout(
        part,
        new Times(notes),
        part.measures().isEmpty()
            ? ImmutableList.of()
            : ImmutableList.copyOf(
                SystemBreaks.of(
                    MeasureShapes.of(notes, new Accidentals(part, passage.measures())), width)));
  }

  /** The number of lines. */
  public int lines() {
    return shapes.size();
  }

  /**
   * The index of the first measure of a line in the part. A long measure may go on in the next
   * lines.
   *
   * @param line its number, from 0
   */
  public int firstMeasure(int line) {
    return shapes.get(line).measures().get(0).notes().measure().index();
  }

  /**
   * The notes and rests of a line.
   *
   * @param line its number, from 0
   */
  public ImmutableSet<NoteAddress> notes(int line) {
    ImmutableSet.Builder<NoteAddress> notes = ImmutableSet.builder();
    shapes.get(line).measures().stream()
        .flatMap(measure -> measure.columns().stream())
        .flatMap(column -> column.column().chords().stream())
        .flatMap(chord -> chord.notes().stream())
        .forEach(note -> notes.add(note.address()));
    return notes.build();
  }

  /**
   * Draws a line. Marks of other lines may be left out of the plans.
   *
   * @param line its number, from 0
   * @param above the plans whose fingers stand above the staff
   * @param below the plans whose fingers stand below the staff
   * @param circles what to circle
   */
  public EngravedSystem draw(
      int line,
      ImmutableList<Lane> above,
      ImmutableList<Lane> below,
      ImmutableList<Circled> circles) {
    return EngravedSystem.of(
        new SystemDrawing(shapes.get(line), part, times, above, below, circles));
  }
}
