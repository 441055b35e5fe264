package fingering.engraving.drawing;

import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.glyph.GlyphRow;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Ink;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.engraving.notes.BeamGroup;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.Chord.Layer;
import fingering.engraving.spacing.BarLines;
import fingering.engraving.spacing.ColumnShape;
import fingering.engraving.spacing.HeadGlyphs;
import fingering.engraving.spacing.MeasureShape;
import fingering.engraving.spacing.Placed;
import fingering.engraving.spacing.SystemShape.Places;
import fingering.music.NoteAddress;
import fingering.music.print.PrintedNote;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Draws heads, accidentals, dots, rests, ledger lines, stems, flags and beams of a system. */
final class NoteDrawing {
  private static final double STEM_LENGTH = 3.5;

  /** What each flag beyond the second adds to a stem. */
  private static final double MORE_FLAGS = 0.75;

  private static final double STROKE_WIDTH = 1.3;
  private static final double STROKE_THICK = 0.4;
  private static final double STROKE_STEP = 0.8;
  private static final double STROKE_RISE = 0.35;

  private final Canvas canvas;
  private final Frame frame;
  private final Set<NoteAddress> beamed = new HashSet<>();
  private final List<Box> beamBoxes = new ArrayList<>();

  NoteDrawing(Canvas canvas, Frame frame) {
    this.canvas = canvas;
    this.frame = frame;
  }

  void draw() {
    List<MeasureShape> measures = frame.shape().measures();
    List<BeamGroup> beams = new ArrayList<>();
    for (MeasureShape measure : measures) {
      for (BeamGroup beam : measure.notes().beams()) {
        if (beam.chords().stream().allMatch(chord -> frame.spot(chord).isPresent())) {
          beams.add(beam);
          beam.chords().forEach(chord -> beamed.add(chord.address()));
        }
      }
    }
    BeamDrawing drawing = new BeamDrawing(canvas, frame);
    beams.forEach(drawing::draw);
    canvas.inks().stream()
        .filter(ink -> ink.kind() == Kind.BEAM)
        .map(Ink::box)
        .forEach(beamBoxes::add);
    for (int m = 0; m < measures.size(); m++) {
      MeasureShape measure = measures.get(m);
      Places places = frame.shape().places().get(m);
      if (measure.rests() > 1) {
        longRest(measure, places);
      }
      for (int c = 0; c < measure.columns().size(); c++) {
        ColumnShape column = measure.columns().get(c);
        canvas.at(
            measure.notes().measure().start().doubleValue()
                + column.column().onset().doubleValue());
        signs(column, places.columns().get(c));
        for (Chord chord : column.column().chords()) {
          if (chord.rest()) {
            wholeRest(measure, places, chord);
          } else {
            ledgers(frame.spot(chord).orElseThrow());
            stem(frame.spot(chord).orElseThrow());
          }
        }
        canvas.at(Double.NaN);
      }
    }
  }

  private void signs(ColumnShape column, double x) {
    for (Placed sign : column.signs()) {
      double y = sign.y();
      if (sign.kind() == Kind.REST) {
        y += clearOfBeams(sign.box().moved(x, 0));
      }
      canvas.glyph(sign.kind(), sign.glyph(), sign.x() + x, y, sign.scale());
    }
  }

  /** How far a rest under or over a beam has to move, in whole spaces. */
  private double clearOfBeams(Box rest) {
    double up = 0;
    double down = 0;
    for (Box box : beamBoxes) {
      if (box.left() < rest.right() && rest.left() < box.right()) {
        boolean over = (box.top() + box.bottom()) / 2 < (rest.top() + rest.bottom()) / 2;
        if (over) {
          down = Math.max(down, Math.ceil(box.bottom() + 0.25 - rest.top()));
        } else {
          up = Math.max(up, Math.ceil(rest.bottom() + 0.25 - box.top()));
        }
      }
    }
    return down > 0 ? down : -up;
  }

  /** A rest of several measures: a bar with its number above. */
  private void longRest(MeasureShape measure, Places places) {
    double left = start(places) + 1;
    double right = places.bar() - BarLines.width(measure.notes().printed().end()) - 1;
    double thin = EngravingDefaults.THIN_BAR_LINE / 2;
    canvas.path(
        Style.INK,
        rectangle(left, 1.65, right, 2.35)
            + rectangle(left - thin, 1, left + thin, 3)
            + rectangle(right - thin, 1, right + thin, 3));
    canvas.ink(Kind.REST, new Box(left - thin, 1, right + thin, 3));
    GlyphRow number = GlyphRow.time(measure.rests());
    canvas.row(Kind.NUMBER, number, (left + right - number.box().width()) / 2, -1.6, 1);
  }

  private static String rectangle(double left, double top, double right, double bottom) {
    return "M%sH%sV%sH%sz"
        .formatted(Canvas.point(left, top), Canvas.n(right), Canvas.n(bottom), Canvas.n(left));
  }

  private static double start(Places places) {
    return places.changes().stream()
        .mapToDouble(sign -> sign.box().right())
        .max()
        .orElse(places.left());
  }

  private void wholeRest(MeasureShape measure, Places places, Chord chord) {
    if (!chord.lead().value().wholeMeasure()) {
      return;
    }
    double left = start(places);
    double right =
        places.clef().stream()
            .mapToDouble(sign -> sign.box().left())
            .min()
            .orElse(places.bar() - 0.2);
    double middle = (left + right) / 2 - Glyph.REST_WHOLE.width() / 2;
    double y = chord.layer() == Layer.ALONE ? 1 : chord.layer() == Layer.UPPER ? -1 : 4;
    // Next to notes of another voice the rest stands at the start of the measure.
    boolean alone = measure.columns().size() == 1;
    double x = alone ? middle : frame.spot(chord).orElseThrow().columnX();
    canvas.glyph(Kind.REST, Glyph.REST_WHOLE, x, y);
    if (y < 0 || y > 3) {
      canvas.bar(
          Kind.LEDGER,
          Style.INK,
          x - 0.3,
          y,
          x + Glyph.REST_WHOLE.width() + 0.3,
          y,
          EngravingDefaults.LEDGER_LINE);
    }
  }

  private void ledgers(Spot spot) {
    Chord chord = spot.chord();
    double reach = EngravingDefaults.LEDGER_EXTENSION * chord.scale();
    for (int i = 0; i < chord.notes().size(); i++) {
      Spot note = frame.spot(chord.notes().get(i).address()).orElseThrow();
      int step = chord.steps().get(i);
      for (int line = 10; line <= step; line += 2) {
        ledger(note.left() - reach, note.right() + reach, Chord.y(line));
      }
      for (int line = -2; line >= step; line -= 2) {
        ledger(note.left() - reach, note.right() + reach, Chord.y(line));
      }
    }
  }

  private void ledger(double left, double right, double y) {
    canvas.bar(Kind.LEDGER, Style.INK, left, y, right, y, EngravingDefaults.LEDGER_LINE);
  }

  private void stem(Spot spot) {
    Chord chord = spot.chord();
    if (chord.stemmed()) {
      if (!beamed.contains(chord.address())) {
        frame.setTip(chord, tip(chord));
      }
      double x = frame.stem(spot);
      double from = chord.up() ? chord.bottom() - 0.17 : chord.top() + 0.17;
      canvas.bar(Kind.STEM, Style.INK, x, from, x, frame.tip(chord), EngravingDefaults.STEM);
      if (chord.flags() > 0 && !beamed.contains(chord.address())) {
        canvas.glyph(
            Kind.FLAG,
            HeadGlyphs.flag(chord),
            x - EngravingDefaults.STEM / 2,
            frame.tip(chord),
            chord.scale());
        if (chord.grace() && chord.lead().shape().slashed()) {
          slash(x, frame.tip(chord));
        }
      }
    }
    strokes(spot);
  }

  /** The stroke through the flag of a short grace note. */
  private void slash(double x, double tip) {
    canvas.path(
        Style.CURVE,
        "M%sL%s".formatted(Canvas.point(x - 0.5, tip + 1.5), Canvas.point(x + 0.8, tip + 0.5)));
    canvas.ink(Kind.FLAG, new Box(x - 0.5, tip + 0.5, x + 0.8, tip + 1.5));
  }

  /** Where an unbeamed stem ends. Stems of notes on ledger lines reach the middle line. */
  static double tip(Chord chord) {
    int strokes = chord.tremolo().paired() || chord.flags() == 0 ? 0 : chord.tremolo().strokes();
    double more = (Math.max(0, chord.flags() - 2) + strokes) * MORE_FLAGS;
    double length = (STEM_LENGTH + more) * chord.scale();
    if (chord.up()) {
      double tip = chord.top() - length;
      return chord.scale() < 1 ? tip : Math.min(tip, 2);
    }
    double tip = chord.bottom() + length;
    return chord.scale() < 1 ? tip : Math.max(tip, 2);
  }

  /** Draws the strokes of a tremolo on one note, on the free part of its stem. */
  private void strokes(Spot spot) {
    Chord chord = spot.chord();
    int strokes = chord.tremolo().strokes();
    if (strokes == 0 || chord.tremolo().paired()) {
      return;
    }
    double side = chord.up() ? -1 : 1;
    double head = (chord.up() ? chord.top() : chord.bottom()) + 0.6 * side;
    double x = chord.stemmed() ? frame.stem(spot) : spot.middle();
    double beams = chord.flags() == 0 ? 0 : 0.75 * chord.flags() + (isBeamed(chord) ? 0 : 0.7);
    double end = frame.tip(chord) - side * (beams + 0.2);
    double middle =
        chord.stemmed() ? (head + end) / 2 : head + side * (0.5 + STROKE_STEP * strokes / 2);
    for (int i = 0; i < strokes; i++) {
      double y = middle + STROKE_STEP * (i - (strokes - 1) / 2.0);
      stroke(x, y);
    }
  }

  private boolean isBeamed(Chord chord) {
    return beamed.contains(chord.address());
  }

  private void stroke(double x, double y) {
    double half = STROKE_WIDTH / 2;
    double rise = STROKE_RISE / 2;
    double thick = STROKE_THICK / 2;
    canvas.path(
        Style.INK,
        "M%sL%sV%sL%sz"
            .formatted(
                Canvas.point(x - half, y + rise - thick),
                Canvas.point(x + half, y - rise - thick),
                Canvas.n(y - rise + thick),
                Canvas.point(x - half, y + rise + thick)));
    canvas.ink(Kind.TREMOLO, new Box(x - half, y - rise - thick, x + half, y + rise + thick));
  }

  /** Whether a note is played by the reader: not a rest, not a cue. */
  static boolean played(PrintedNote note) {
    return !note.rest() && !note.cue();
  }
}
