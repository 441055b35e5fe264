package fingering.page.staff;

import fingering.music.print.Clef;
import fingering.music.print.NoteShape;
import fingering.music.print.PrintedMeasure.KeyChange;
import fingering.music.print.PrintedNote;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Notes and rests of a measure that begin together, with their cells in each lane. */
final class Column {
  /** The marks of a lane for a column. */
  record Cell(
      List<String> fingers,
      String string,
      String label,
      Optional<Lane.Direction> shift,
      boolean differs,
      String position) {
    /** A cell of a column without a planned note. */
    static Cell empty(String position) {
      return new Cell(List.of(), "", "", Optional.empty(), false, position);
    }

    /** Pixels from the middle of the column to the end of the label. */
    double labelWidth() {
      return label.isEmpty()
          ? 0
          : LaneDrawing.arrowWidth(this) + LaneDrawing.labelTextWidth(label) - LaneDrawing.LEAD + 5;
    }
  }

  /** The width of a change of clef. */
  static final double CLEF = 22;

  final BigFraction onset;
  final boolean grace;
  final List<Stem> stems = new ArrayList<>();

  /** The cell of each lane, in the order of the lanes. */
  final List<Cell> cells = new ArrayList<>();

  /** A change of clef before it. */
  Optional<Clef> clef = Optional.empty();

  /** A change of key before it. */
  Optional<KeyChange> key = Optional.empty();

  /** Pixels from the start of the piece to the middle of the noteheads. */
  double x;

  Column(BigFraction onset, boolean grace) {
    this.onset = onset;
    this.grace = grace;
  }

  /** The width of a change of key. */
  double keyWidth() {
    return key.map(change -> Signature.keyWidth(change.fifths(), change.before()) + 6).orElse(0.0);
  }

  /** The width of clef and key changes, accidentals and noteheads left of the middle. */
  double left(DrawnAccidentals accidentals) {
    double left = Glyphs.HEAD + 1;
    double sign = (clef.isPresent() ? CLEF : 0) + keyWidth();
    for (Stem stem : stems) {
      if (stem.rest()) {
        continue;
      }
      int signs = 0;
      double heads = Glyphs.HEAD;
      for (int i = 0; i < stem.notes.size(); i++) {
        PrintedNote note = stem.notes.get(i);
        signs += accidentals.shown(note).isPresent() ? 1 : 0;
        heads = Math.max(heads, Glyphs.HEAD - stem.headOffset(i));
      }
      left = Math.max(left, heads + signs * 9 + 1);
    }
    return left + sign;
  }

  /** The width of noteheads, dots and flags right of the middle. */
  double right() {
    double right = Glyphs.HEAD + 1;
    for (Stem stem : stems) {
      double own = Glyphs.HEAD + 1;
      for (int i = 0; i < stem.notes.size(); i++) {
        own = Math.max(own, Glyphs.HEAD + 1 + Math.max(0, stem.headOffset(i)));
      }
      boolean flagged =
          stem.stemmed() && stem.up && stem.lead().shape().beam() == NoteShape.Beam.NONE;
      own += stem.lead().value().dots() * 5.0;
      own += flagged && stem.lead().value().flags() > 0 ? 5 : 0;
      right = Math.max(right, own);
    }
    return right;
  }

  /** Half the width of the widest finger or numeral. */
  double text() {
    double half = 0;
    for (Cell cell : cells) {
      for (String finger : cell.fingers()) {
        half = Math.max(half, LaneDrawing.fingerWidth(finger) / 2 + 1);
      }
      half = Math.max(half, LaneDrawing.stringWidth(cell.string()) / 2 + 1);
    }
    return half;
  }
}
