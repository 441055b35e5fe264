package fingering.engraving.drawing;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.glyph.Box;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Style;
import fingering.engraving.spacing.SystemShape;
import fingering.music.NoteAddress;
import fingering.music.print.PrintedPart;

/**
 * Draws a system from the notes outward: what stands nearer to the notes is drawn first, and
 * everything after it is placed outside what is there.
 */
public final class SystemDrawing {
  private final SystemShape shape;
  private final Canvas canvas;
  private final Frame frame;

  /**
   * Draws a system.
   *
   * @param shape where its notes stand
   * @param part what is printed
   * @param times the times of all notes
   * @param above the lanes above the staff
   * @param below the lanes below it
   * @param circles what to circle
   */
  public SystemDrawing(
      SystemShape shape,
      PrintedPart part,
      Times times,
      ImmutableList<Lane> above,
      ImmutableList<Lane> below,
      ImmutableList<Circled> circles) {
    this.shape = shape;
    canvas = new Canvas(shape.width());
    frame = new Frame(shape);
    new StaffDrawing(canvas, shape).draw();
    new NoteDrawing(canvas, frame).draw();
    SignDrawing signs = new SignDrawing(canvas, frame, part.noteLines());
    CurveDrawing curves = new CurveDrawing(canvas, frame, times);
    curves.ties();
    signs.near();
    new TupletDrawing(canvas, frame).draw();
    curves.slurs(part.slurs());
    FingerDrawing fingers = new FingerDrawing(canvas, frame);
    above.forEach(lane -> fingers.fingers(lane, true, Style.FIRST));
    signs.over();
    signs.after();
    new OctaveDrawing(canvas, frame).draw(part.octaveLines());
    for (int i = 0; i < below.size(); i++) {
      Style style = i == 0 ? Style.SECOND : Style.THIRD;
      fingers.fingers(below.get(i), false, style);
      canvas.raw("<g class=\"" + style.css() + "\">");
      fingers.positions(below.get(i), false);
      canvas.raw("</g>");
    }
    new Dynamics(canvas, frame, part).draw();
    above.forEach(lane -> fingers.positions(lane, true));
    TextDrawing texts = new TextDrawing(canvas, frame, part);
    texts.number();
    texts.endings();
    texts.words();
    texts.rehearsal();
    new CircleDrawing(canvas).draw(circles);
  }

  /** Where its notes stand. */
  public SystemShape shape() {
    return shape;
  }

  /** The box of the head of each note. */
  public ImmutableMap<NoteAddress, Box> heads() {
    ImmutableMap.Builder<NoteAddress, Box> heads = ImmutableMap.builder();
    for (Spot spot : frame.spots()) {
      if (!spot.note().rest()) {
        double half = spot.chord().scale() / 2;
        heads.put(
            spot.note().address(),
            new Box(spot.left(), spot.y() - half, spot.right(), spot.y() + half));
      }
    }
    return heads.buildOrThrow();
  }

  /** What is drawn. */
  public Canvas canvas() {
    return canvas;
  }
}
