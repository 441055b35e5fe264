package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.NoteAddress;
import fingering.music.print.Clef;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.Slur;
import fingering.page.staff.Strip.Piece;
import fingering.page.svg.Svg;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws the pieces of a strip after the layout. */
final class StripDrawing {
  private static final double NUMBER_ROW = 15;
  private static final double ENDINGS_ROW = 15;
  private static final double DYNAMICS_ROW = 16;
  private static final double GAP = 8;

  private final PrintedPart part;
  private final ImmutableList<Lane> lanes;
  private final DrawnAccidentals accidentals;
  private final List<StripPiece> spans;
  private final double margin;
  private final Extents extents = new Extents();
  private final Map<NoteAddress, DrawnNote> spots = new HashMap<>();
  private final List<Svg> music = new ArrayList<>();

  StripDrawing(
      PrintedPart part,
      ImmutableList<Lane> lanes,
      DrawnAccidentals accidentals,
      List<StripPiece> spans,
      double margin) {
    this.part = part;
    this.lanes = lanes;
    this.accidentals = accidentals;
    this.spans = spans;
    this.margin = margin;
  }

  Strip strip() {
    for (int i = 0; i < spans.size(); i++) {
      Svg svg = new Svg();
      music.add(svg);
      new NoteDrawing(svg, extents, accidentals, spans.get(i)).draw(i, spots);
    }
    Map<NoteAddress, Boolean> curved = curved();
    for (int i = 0; i < spans.size(); i++) {
      new TupletDrawing(
              music.get(i),
              extents,
              spans.get(i),
              note -> Optional.ofNullable(curved.get(note.address())))
          .draw();
    }
    CurveDrawing curves = new CurveDrawing(music, spans, spots, extents);
    ties(curves);
    part.slurs().forEach(slur -> slur(curves, slur));
    return placed();
  }

  private void ties(CurveDrawing curves) {
    Map<Pitch, DrawnNote> open = new HashMap<>();
    for (StripPiece span : spans) {
      for (Column column : span.columns) {
        for (Stem stem : column.stems) {
          for (PrintedNote note : stem.notes) {
            note.pitch()
                .map(open::remove)
                .ifPresent(from -> curves.tie(from, spots.get(note.address())));
          }
        }
        for (Stem stem : column.stems) {
          for (PrintedNote note : stem.notes) {
            if (note.tied()) {
              open.put(note.pitch().orElseThrow(), spots.get(note.address()));
            }
          }
        }
      }
    }
  }

  /** Notes under or over a slur, with whether the slur is above. */
  private Map<NoteAddress, Boolean> curved() {
    Map<NoteAddress, Boolean> curved = new HashMap<>();
    for (Slur slur : part.slurs()) {
      Optional<DrawnNote> from = Optional.ofNullable(spots.get(slur.from()));
      Optional<DrawnNote> to = Optional.ofNullable(spots.get(slur.to()));
      if (from.isPresent() && to.isPresent()) {
        boolean over = CurveDrawing.over(from.get(), to.get());
        spots.forEach(
            (address, spot) -> {
              if (CurveDrawing.within(spot, from.get(), to.get())) {
                curved.put(address, over);
              }
            });
      }
    }
    return curved;
  }

  private void slur(CurveDrawing curves, Slur slur) {
    Optional<DrawnNote> from = Optional.ofNullable(spots.get(slur.from()));
    Optional<DrawnNote> to = Optional.ofNullable(spots.get(slur.to()));
    if (from.isEmpty() && to.isEmpty()) {
      return;
    }
    curves.slur(
        from.orElseGet(() -> outer(true)),
        to.orElseGet(() -> outer(false)),
        from.isPresent(),
        to.isPresent());
  }

  /** The first note that was drawn, or the last. */
  private DrawnNote outer(boolean first) {
    List<DrawnNote> known =
        PlainEngraver.addresses(spans).stream().filter(spots::containsKey).map(spots::get).toList();
    return known.get(first ? 0 : known.size() - 1);
  }

  private Strip placed() {
    List<Integer> stacks = new ArrayList<>();
    for (int lane = 0; lane < lanes.size(); lane++) {
      int index = lane;
      stacks.add(
          spans.stream()
              .flatMap(span -> span.columns.stream())
              .mapToInt(column -> column.cells.get(index).fingers().size())
              .max()
              .orElse(1));
    }
    int over = Math.min(1, lanes.size());
    double y = NUMBER_ROW;
    List<LaneDrawing> drawings = new ArrayList<>();
    for (int lane = 0; lane < over; lane++) {
      drawings.add(new LaneDrawing(lane, stacks.get(lane), true, y));
      y += LaneDrawing.height(stacks.get(lane));
    }
    int lines =
        spans.stream()
            .flatMap(span -> span.words.stream())
            .mapToInt(text -> text.lines().size())
            .max()
            .orElse(0);
    double endings = y + 2;
    y += part.endings().isEmpty() ? 0 : ENDINGS_ROW;
    double wordsBottom = y + lines * TextRow.LINE + 2;
    double staff = Math.ceil(wordsBottom - extents.top());
    double dynamicsTop = staff + extents.bottom() + 2;
    boolean dynamics =
        !part.wedges().isEmpty() || spans.stream().anyMatch(span -> !span.dynamics.isEmpty());
    y = dynamicsTop + (dynamics ? DYNAMICS_ROW : 0);
    for (int lane = over; lane < lanes.size(); lane++) {
      drawings.add(new LaneDrawing(lane, stacks.get(lane), false, y));
      y += LaneDrawing.height(stacks.get(lane));
    }
    int height = (int) Math.ceil(y + GAP);
    StripFrame frame =
        new StripFrame(
            new StripFrame.Rows(staff, endings, wordsBottom, dynamicsTop, height),
            part,
            spans,
            margin);
    ImmutableList.Builder<Piece> pieces = ImmutableList.builder();
    RowHeads heads = new RowHeads();
    List<String> positions = new ArrayList<>(lanes.stream().map(lane -> "").toList());
    for (int i = 0; i < spans.size(); i++) {
      StripPiece span = spans.get(i);
      Svg head = new Svg();
      Clef clef = span.printed.clefAt(span.from());
      frame.head(head, clef, span.printed.fifthsAt(span.from(), span.measure.fifths()));
      Svg body = new Svg();
      frame.background(body);
      body.raw("<g transform=\"translate(0," + Svg.number(staff) + ")\">")
          .raw(music.get(i).toString())
          .raw("</g>");
      frame.bars(body, i);
      frame.texts(body, i);
      for (int lane = 0; lane < lanes.size(); lane++) {
        boolean held = !positions.get(lane).isEmpty();
        drawings.get(lane).draw(body, span, held);
        boolean labelled =
            !span.columns.isEmpty() && !span.columns.get(0).cells.get(lane).label().isEmpty();
        drawings
            .get(lane)
            .head(head, lanes.get(lane).key(), labelled ? "" : positions.get(lane), -margin);
        if (!span.columns.isEmpty()) {
          positions.set(lane, span.columns.get(span.columns.size() - 1).cells.get(lane).position());
        }
      }
      pieces.add(
          new Piece(
              span.measure.index(),
              span.measure.number(),
              span.first,
              (int) span.width,
              heads.use(head.toString()),
              body.toString(),
              StripWords.of(span, lanes)));
    }
    return new Strip(Glyphs.shapes(), heads.shapes(), height, (int) margin, pieces.build());
  }
}
