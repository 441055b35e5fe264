package fingering.engraving.drawing;

import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.engraving.notes.BeamGroup;
import fingering.engraving.notes.Chord;
import fingering.music.print.NoteShape.Beam;
import java.util.List;

/** Draws beams: their slope, and the stems that they end. */
final class BeamDrawing {
  /** The least length of a stem to the nearest side of the outer beam. */
  private static final double LEAST_STEM = 3.0;

  /** The steepest beam: staff spaces a note, and in all. */
  private static final double SLOPE_A_NOTE = 0.5;

  private static final double STEEPEST = 1.25;

  /** The steepest beam in staff spaces for each staff space of its length. */
  private static final double STEEPEST_ANGLE = 0.2;

  private static final double STEP = EngravingDefaults.BEAM + EngravingDefaults.BEAM_GAP;
  private static final double HOOK = 1.1;

  private final Canvas canvas;
  private final Frame frame;

  BeamDrawing(Canvas canvas, Frame frame) {
    this.canvas = canvas;
    this.frame = frame;
  }

  /** The line of the outer edge of a beam. */
  private record Line(double x0, double y0, double slope) {
    double y(double x) {
      return y0 + slope * (x - x0);
    }
  }

  void draw(BeamGroup group) {
    List<Spot> spots =
        group.chords().stream().map(chord -> frame.spot(chord).orElseThrow()).toList();
    double scale = group.chords().get(0).scale();
    int most = group.chords().stream().mapToInt(group::beams).max().orElse(1);
    Line line = line(group, spots, most, scale);
    for (Spot spot : spots) {
      frame.setTip(spot.chord(), line.y(frame.stem(spot)));
    }
    if (group.tremolo()) {
      tremolo(group, spots, line);
      return;
    }
    for (int level = 0; level < most; level++) {
      level(group, spots, line, level, scale);
    }
  }

  private Line line(BeamGroup group, List<Spot> spots, int beams, double scale) {
    boolean up = group.up();
    double side = up ? -1 : 1;
    int strokes =
        group.chords().stream()
            .filter(chord -> !chord.tremolo().paired())
            .mapToInt(chord -> chord.tremolo().strokes())
            .max()
            .orElse(0);
    double length =
        (LEAST_STEM + (Math.max(0, beams - 2) + strokes) * STEP + (beams > 1 ? 0.25 : 0)) * scale;
    double x0 = frame.stem(spots.get(0));
    double x1 = frame.stem(spots.get(spots.size() - 1));
    double rise = rise(group, spots, x1 - x0);
    double slope = x1 > x0 ? rise / (x1 - x0) : 0;
    double y0 = up ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    for (Spot spot : spots) {
      double note = inner(spot.chord(), up);
      double at = note + side * length - slope * (frame.stem(spot) - x0);
      y0 = up ? Math.min(y0, at) : Math.max(y0, at);
    }
    if (scale == 1) {
      // A beam reaches the middle line, however far the notes are outside the staff.
      double far = up ? Math.max(y0, y0 + rise) : Math.min(y0, y0 + rise);
      y0 += up ? Math.min(0, 2 - far) : Math.max(0, 2 - far);
      y0 = snapped(y0, up);
    }
    return new Line(x0, y0, slope);
  }

  /** The y of the head that is nearest to the beam. */
  private static double inner(Chord chord, boolean up) {
    return up ? chord.top() : chord.bottom();
  }

  /**
   * Moves the edge of a beam within the staff away from the notes, so that the beam hangs from a
   * line, sits on it or straddles it, and leaves no sliver of white (common practice).
   */
  private static double snapped(double edge, boolean up) {
    double top = up ? edge : edge - EngravingDefaults.BEAM;
    if (top < -1 || top > 4.5) {
      return edge;
    }
    double moved = up ? Math.floor(top * 4) / 4 : Math.ceil(top * 4) / 4;
    double share = moved - Math.floor(moved);
    if (share == 0.25) {
      moved += up ? -0.25 : 0.25;
    }
    return up ? moved : moved + EngravingDefaults.BEAM;
  }

  /** How far the beam rises or falls from its first to its last stem; positive downward. */
  private double rise(BeamGroup group, List<Spot> spots, double length) {
    boolean up = group.up();
    double first = inner(spots.get(0).chord(), up);
    double last = inner(spots.get(spots.size() - 1).chord(), up);
    double nearest = up ? Math.min(first, last) : Math.max(first, last);
    for (Spot spot : spots.subList(1, spots.size() - 1)) {
      double y = inner(spot.chord(), up);
      if (up ? y < nearest - 0.01 : y > nearest + 0.01) {
        return 0;
      }
    }
    double most =
        Math.min(Math.min(STEEPEST, SLOPE_A_NOTE * (spots.size() - 1)), STEEPEST_ANGLE * length);
    double rise = Math.min(most, Math.abs(last - first) / 2);
    return Math.copySign(Math.floor(rise * 4) / 4, last - first);
  }

  private void level(BeamGroup group, List<Spot> spots, Line line, int level, double scale) {
    for (int i = 0; i < spots.size(); i++) {
      if (group.beams(spots.get(i).chord()) <= level) {
        continue;
      }
      int end = i;
      while (end + 1 < spots.size()
          && group.beams(spots.get(end + 1).chord()) > level
          && !ends(spots.get(end).chord(), level)) {
        end++;
      }
      double left = frame.stem(spots.get(i));
      double right = frame.stem(spots.get(end));
      if (end == i) {
        boolean back = back(spots, i, level);
        double hook = HOOK * scale;
        left -= back ? hook : 0;
        right += back ? 0 : hook;
      }
      bar(line, left, right, level, group.up(), scale);
      i = end;
    }
  }

  /** Whether the score ends a beam at a chord: a secondary beam may be divided. */
  private static boolean ends(Chord chord, int level) {
    return level > 0 && chord.beams().size() > level && chord.beams().get(level) == Beam.END;
  }

  /** Whether a short beam points to the left: as printed, or as its place in the group says. */
  private static boolean back(List<Spot> spots, int index, int level) {
    List<Beam> printed = spots.get(index).chord().beams();
    if (printed.size() > level && printed.get(level) == Beam.BACKWARD_HOOK) {
      return true;
    }
    if (printed.size() > level && printed.get(level) == Beam.FORWARD_HOOK) {
      return false;
    }
    return index > 0 && (index + 1 == spots.size() || backward(spots, index));
  }

  /** Whether a hook between two longer notes points back: it belongs to the dotted note. */
  private static boolean backward(List<Spot> spots, int index) {
    return spots.get(index - 1).note().value().dots() > 0
        || spots.get(index + 1).note().value().dots() == 0;
  }

  private void bar(Line line, double left, double right, int level, boolean up, double scale) {
    double half = EngravingDefaults.STEM / 2;
    double from = left - half;
    double to = right + half;
    double inward = up ? 1 : -1;
    double outer = level * STEP * scale * inward;
    double thick = EngravingDefaults.BEAM * scale * inward;
    canvas.path(
        Style.INK,
        "M%sL%sV%sL%sz"
            .formatted(
                Canvas.point(from, line.y(from) + outer),
                Canvas.point(to, line.y(to) + outer),
                Canvas.n(line.y(to) + outer + thick),
                Canvas.point(from, line.y(from) + outer + thick)));
    ink(line, from, to, outer, thick, Kind.BEAM);
  }

  /** Records a slanted bar in short pieces, so that its boxes fit it. */
  private void ink(Line line, double from, double to, double outer, double thick, Kind kind) {
    int pieces = Math.max(1, (int) Math.ceil((to - from) / 1.5));
    for (int i = 0; i < pieces; i++) {
      double a = from + (to - from) * i / pieces;
      double b = from + (to - from) * (i + 1) / pieces;
      double y1 = Math.min(line.y(a), line.y(b)) + outer;
      double y2 = Math.max(line.y(a), line.y(b)) + outer;
      canvas.ink(kind, new Box(a, Math.min(y1, y1 + thick), b, Math.max(y2, y2 + thick)));
    }
  }

  /** The strokes between two notes that alternate; they touch no stem. */
  private void tremolo(BeamGroup group, List<Spot> spots, Line line) {
    double left = frame.stem(spots.get(0)) + 0.6;
    double right = frame.stem(spots.get(1)) - 0.6;
    int strokes = group.beams(spots.get(0).chord());
    for (int level = 0; level < strokes && right > left; level++) {
      bar(line, left, right, level, group.up(), 1);
    }
  }
}
