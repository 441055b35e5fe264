package fingering.page.staff;

import fingering.music.Clef;
import fingering.music.PrintedMeasure.KeyChange;
import fingering.music.PrintedNote;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Notes and rests of a measure that begin together, and what the lanes have to say of them. */
final class Column {
  /** What a lane says of a column. */
  record Cell(
      List<String> fingers,
      String string,
      String label,
      Optional<Lane.Way> shift,
      boolean differs,
      String position) {
    /** A cell without a note that begins. */
    static Cell empty(String position) {
      return new Cell(List.of(), "", "", Optional.empty(), false, position);
    }

    /** Pixels that the label takes from the column's middle on. */
    double labelWidth() {
      return label.isEmpty()
          ? 0
          : LaneDrawing.arrowWidth(this) + LaneDrawing.labelTextWidth(label) - LaneDrawing.LEAD + 5;
    }
  }

  /** Room that a change of clef takes. */
  static final double CLEF = 22;

  final BigFraction onset;
  final boolean grace;
  final List<Stem> stems = new ArrayList<>();

  /** What each lane says, in the order of the lanes. */
  final List<Cell> cells = new ArrayList<>();

  /** A change of clef before it. */
  Optional<Clef> clef = Optional.empty();

  /** A change of key before it. */
  Optional<KeyChange> key = Optional.empty();

  /** Pixels from the start of the piece to the middle of the heads. */
  double x;

  Column(BigFraction onset, boolean grace) {
    this.onset = onset;
    this.grace = grace;
  }

  /** Room that a change of key takes. */
  double keyRoom() {
    return key.map(change -> Signature.keyWidth(change.fifths(), change.before()) + 6).orElse(0.0);
  }

  /** Room that changes of clef and key, accidentals and heads take left of the middle. */
  double left(DrawnAccidentals accidentals) {
    double left = Glyphs.HEAD + 1;
    double sign = (clef.isPresent() ? CLEF : 0) + keyRoom();
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

  /** Room that heads, dots and flags take right of the middle. */
  double right() {
    double right = Glyphs.HEAD + 1;
    for (Stem stem : stems) {
      double own = Glyphs.HEAD + 1;
      for (int i = 0; i < stem.notes.size(); i++) {
        own = Math.max(own, Glyphs.HEAD + 1 + Math.max(0, stem.headOffset(i)));
      }
      boolean flagged = stem.stemmed() && stem.up && stem.lead().beam() == PrintedNote.Beam.NONE;
      own += stem.lead().value().dots() * 5.0;
      own += flagged && stem.lead().value().flags() > 0 ? 5 : 0;
      right = Math.max(right, own);
    }
    return right;
  }

  /** Half the room that fingers and numerals need. */
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
