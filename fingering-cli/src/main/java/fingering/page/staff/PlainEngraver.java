package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.KeyChange;
import fingering.music.print.PrintedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws a simple, clean staff: notes, beams, rests, slurs, text and dynamics, with the marks of the
 * plans in lanes above and below it. It leaves out many details of engraved music.
 */
public final class PlainEngraver implements Engraver {
  /** A row with its head fits on the narrowest phone: 360 pixels less the margins of the page. */
  private static final double NARROWEST_ROW = 328;

  /** The least width for the letter of a plan and the name of a position. */
  private static final double LEAST_MARGIN = 50;

  @Override
  public Strip engrave(Passage passage, PrintedPart part, ImmutableList<Lane> lanes) {
    DrawnAccidentals accidentals = new DrawnAccidentals(part, passage.measures());
    List<Columns> columns = new ArrayList<>();
    for (PrintedMeasure measure : part.measures()) {
      columns.add(new Columns(measure));
    }
    for (Lane lane : lanes) {
      LaneCells cells = new LaneCells(lane);
      columns.forEach(one -> cells.add(one.columns));
    }
    double margin = margin(passage, part);
    Spacing spacing = new Spacing(accidentals, margin, NARROWEST_ROW - margin);
    List<StripPiece> spans = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      spans.addAll(
          spacing.spans(
              passage.measures().get(i),
              part.measures().get(i),
              columns.get(i),
              i == 0,
              next(passage, part, i)));
    }
    return new StripDrawing(part, lanes, accidentals, spans, margin).strip();
  }

  private static double margin(Passage passage, PrintedPart part) {
    double width = LEAST_MARGIN;
    for (int i = 0; i < part.measures().size(); i++) {
      width = Math.max(width, Signature.width(passage.measures().get(i).fifths()) + 6);
      for (KeyChange change : part.measures().get(i).keys()) {
        width = Math.max(width, Signature.width(change.fifths()) + 6);
      }
    }
    return Math.ceil(width);
  }

  private static Optional<Spacing.Next> next(Passage passage, PrintedPart part, int index) {
    if (index + 1 >= part.measures().size()) {
      return Optional.empty();
    }
    Measure measure = passage.measures().get(index + 1);
    Clef clef = part.measures().get(index + 1).clef();
    return Optional.of(new Spacing.Next(measure, clef));
  }

  /** The addresses of all notes, in order. */
  static List<NoteAddress> addresses(List<StripPiece> spans) {
    List<NoteAddress> all = new ArrayList<>();
    for (StripPiece span : spans) {
      span.columns.forEach(
          column ->
              column.stems.forEach(stem -> stem.notes.forEach(note -> all.add(note.address()))));
    }
    return all;
  }
}
