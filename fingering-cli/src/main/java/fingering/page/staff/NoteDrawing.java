package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.NoteAddress;
import fingering.music.print.NoteShape;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Sign;
import fingering.page.svg.Svg;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Draws the notes and rests of a piece, with the top line of the staff at 0. */
final class NoteDrawing {
  private static final double STEM = 27;
  private static final double SMALL_STEM = 18;

  /** Pixels from one stroke of a tremolo to the next. */
  private static final double STROKE = 4.6;

  private static final double HEAD = Glyphs.HEAD;

  /** Signs above everything else, the lowest first. */
  private static final ImmutableList<Sign> OVER =
      ImmutableList.of(
          Sign.HARMONIC, Sign.LEFT_PLUCKED, Sign.DOWN_BOW, Sign.UP_BOW, Sign.TRILL, Sign.FERMATA);

  private final Svg svg;
  private final Extents extents;
  private final DrawnAccidentals accidentals;
  private final StripPiece span;

  /** All stems and ledger lines of the piece, drawn as one path. */
  private final StringBuilder lines = new StringBuilder();

  /** All black noteheads of the piece: a path with one as the marker at each point. */
  private final StringBuilder heads = new StringBuilder();

  NoteDrawing(Svg svg, Extents extents, DrawnAccidentals accidentals, StripPiece span) {
    this.svg = svg;
    this.extents = extents;
    this.accidentals = accidentals;
    this.span = span;
  }

  /**
   * Draws everything.
   *
   * @param piece the index of the piece
   * @param spots receives the place of each note
   */
  void draw(int piece, Map<NoteAddress, DrawnNote> spots) {
    for (Column column : span.columns) {
      changes(column);
      for (Stem stem : column.stems) {
        if (stem.rest()) {
          rest(column, stem);
        } else {
          stem.tip = tip(stem);
        }
      }
    }
    List<List<Stem>> beams = span.inside(span.source.beams);
    StringBuilder bars = new StringBuilder();
    BeamDrawing drawing = new BeamDrawing(bars, span);
    beams.forEach(drawing::draw);
    List<List<Stem>> tremolos = span.inside(span.source.tremolos);
    tremolos.forEach(drawing::tremolo);
    if (bars.length() > 0) {
      svg.path("beam", bars.toString());
    }
    beams.addAll(tremolos);
    for (Column column : span.columns) {
      for (Stem stem : column.stems) {
        if (!stem.rest()) {
          boolean beamed = beams.stream().anyMatch(beam -> beam.contains(stem));
          notes(column, stem, beamed);
          addSpots(piece, column, stem, signs(column, stem), spots);
        }
      }
    }
    if (heads.length() > 0) {
      svg.path("heads", heads.toString());
    }
    if (lines.length() > 0) {
      svg.path("stem", lines.toString());
    }
  }

  /** Draws changes of clef and key before a column. */
  private void changes(Column column) {
    double x = column.x - column.left(accidentals);
    column.clef.ifPresent(clef -> Signature.smallClef(svg, clef, x + 9, 0));
    double after = x + (column.clef.isPresent() ? Column.CLEF : 0);
    column.key.ifPresent(
        key ->
            Signature.key(
                svg, span.printed.clefAt(column.onset), key.fifths(), key.before(), after));
  }

  private static double tip(Stem stem) {
    boolean small = stem.scale() < 1;
    double length = small ? SMALL_STEM : STEM;
    return stem.up
        ? Math.min(Stem.y(stem.highest()) - length, small ? 99 : 16)
        : Math.max(Stem.y(stem.lowest()) + length, small ? -99 : 16);
  }

  private void rest(Column column, Stem stem) {
    PrintedNote note = stem.lead();
    double shift = !span.source.crowded() ? 0 : stem.up ? -12 : 12;
    if (note.value().wholeMeasure()) {
      double middle = (column.x - HEAD + (span.last ? span.bar : span.width)) / 2 - 2;
      svg.use("g-r1", span.columns.size() == 1 ? middle : column.x, 16 + shift);
      return;
    }
    int flags = note.value().flags();
    String shape =
        switch (note.value().part()) {
          case 0, 1 -> "g-r1";
          case 2 -> "g-r2";
          case 4 -> "g-r4";
          default -> flags == 1 ? "g-r8" : flags == 2 ? "g-r16" : "g-r32";
        };
    svg.use(shape, column.x, 16 + shift);
    for (int dot = 0; dot < note.value().dots(); dot++) {
      svg.circle("ink", column.x + 8.5 + 5 * dot, 12 + shift, 1.5);
    }
    extents.add(shift, 32 + shift);
  }

  private void notes(Column column, Stem stem, boolean beamed) {
    double scale = stem.scale();
    int signs = 0;
    for (int i = stem.notes.size() - 1; i >= 0; i--) {
      PrintedNote note = stem.notes.get(i);
      double x = column.x + stem.headOffset(i) * scale;
      double y = Stem.y(stem.steps.get(i));
      head(note, x, y, scale);
      ledgers(stem.steps.get(i), x, scale);
      for (int dot = 0; dot < note.value().dots(); dot++) {
        double dotY = Math.floorMod(stem.steps.get(i), 2) == 0 ? y - 4 : y;
        svg.circle("ink", column.x + HEAD + 4.5 + 5 * dot, dotY, 1.5);
      }
      if (accidentals.shown(note).isPresent()) {
        double signX = column.x + leastOffset(stem) * scale - HEAD * scale - 5.5 - 9 * signs++;
        Signature.sign(svg, accidentals.shown(note).getAsInt(), signX, y);
      }
      extents.add(y - 5, y + 5);
    }
    if (stem.stemmed()) {
      stem(column, stem, beamed, scale);
    }
    strokes(column, stem, beamed);
  }

  /** Draws the strokes of a tremolo on one note, centred on the free part of its stem. */
  private void strokes(Column column, Stem stem, boolean beamed) {
    int strokes = stem.tremolo().strokes();
    if (strokes == 0 || stem.tremolo().paired()) {
      return;
    }
    double direction = stem.up ? -1 : 1;
    double head = Stem.y(stem.up ? stem.highest() : stem.lowest()) + 5 * direction;
    int flags = stem.lead().value().flags();
    double end = stem.tip - direction * (flags == 0 ? 0 : beamed ? 6 * flags : 6 * flags + 6);
    double x = stem.stemmed() ? stemX(column, stem) : column.x;
    double middle =
        stem.stemmed() ? (head + end) / 2 : head + direction * (4 + STROKE * strokes / 2);
    for (int i = 0; i < strokes; i++) {
      svg.use("g-stroke", x, middle + STROKE * (i - (strokes - 1) / 2.0));
    }
  }

  private static double leastOffset(Stem stem) {
    double least = 0;
    for (int i = 0; i < stem.notes.size(); i++) {
      least = Math.min(least, stem.headOffset(i));
    }
    return least;
  }

  private void head(PrintedNote note, double x, double y, double scale) {
    String shape =
        switch (note.value().part()) {
          case 0 -> "g-breve";
          case 1 -> "g-whole";
          case 2 -> "g-half";
          default -> "g-full";
        };
    if (scale == 1 && shape.equals("g-full")) {
      heads.append(heads.length() == 0 ? "M" : "L").append(Svg.point(x, y));
    } else {
      svg.use(shape, x, y, scale);
    }
  }

  private void ledgers(int step, double x, double scale) {
    double half = 8 * scale;
    for (int line = 10; line <= step; line += 2) {
      ledger(x, half, line);
    }
    for (int line = -2; line >= step; line -= 2) {
      ledger(x, half, line);
    }
  }

  private void ledger(double x, double half, int step) {
    lines.append('M').append(Svg.point(x - half, Stem.y(step))).append('h');
    lines.append(Svg.number(2 * half));
  }

  private void stem(Column column, Stem stem, boolean beamed, double scale) {
    double x = stemX(column, stem);
    double from = stem.up ? Stem.y(stem.lowest()) : Stem.y(stem.highest());
    lines.append('M').append(Svg.point(x, from + (stem.up ? -1.5 : 1.5)));
    lines.append('V').append(Svg.number(stem.tip));
    int flags = beamed ? 0 : stem.lead().value().flags();
    for (int flag = 0; flag < flags; flag++) {
      double y = stem.tip + (stem.up ? 6 : -6) * flag;
      String shape = stem.up ? "g-flag-u" : "g-flag-d";
      svg.use(shape, x, y, scale);
    }
    if (stem.grace() && stem.lead().value().flags() == 1) {
      svg.line("stem", x - 4, stem.tip + 10, x + 5, stem.tip + 4);
    }
    extents.add(stem.tip, from);
  }

  /** The x of a stem. */
  static double stemX(Column column, Stem stem) {
    double reach = (HEAD - 0.5) * stem.scale();
    return column.x + (stem.up ? reach : -reach);
  }

  /** Draws signs near the notehead, then those above everything; returns the top of them. */
  private double signs(Column column, Stem stem) {
    double step = stem.up ? 1 : -1;
    double y = stem.up ? Stem.y(stem.lowest()) + 8 : Stem.y(stem.highest()) - 8;
    for (Sign sign : new Sign[] {Sign.STACCATO, Sign.TENUTO, Sign.ACCENT, Sign.MARCATO}) {
      if (has(stem, sign)) {
        // A dot on a line of the staff would be invisible.
        double clear = y > 0 && y < 32 && Math.round(y) % 8 == 0 ? y + 4 * step : y;
        svg.use("g-" + sign.name().toLowerCase(Locale.ROOT), column.x, clear);
        extents.add(clear - 4, clear + 4);
        y = clear + 8 * step;
      }
    }
    double top = Math.min(Math.min(top(stem), stem.up ? 99 : y + 8) - 8, -8);
    for (Sign sign : OVER) {
      if (!has(stem, sign)) {
        continue;
      }
      switch (sign) {
        case HARMONIC -> svg.use("g-ring", column.x, top);
        case LEFT_PLUCKED -> svg.use("g-plus", column.x, top);
        case DOWN_BOW -> svg.use("g-down-bow", column.x, top);
        case UP_BOW -> svg.use("g-up-bow", column.x, top);
        case TRILL -> svg.text("tr", column.x, top + 4, "tr");
        default -> svg.use("g-fermata", column.x, top);
      }
      extents.add(top - 8, top);
      top -= 11;
    }
    return top + 5;
  }

  private static boolean has(Stem stem, Sign sign) {
    return stem.notes.stream().anyMatch(note -> has(note, sign));
  }

  // These have no drawing of their own here.
  private static boolean has(PrintedNote note, Sign sign) {
    return note.has(sign)
        || switch (sign) {
          case STACCATO -> note.has(Sign.STACCATISSIMO);
          case FERMATA -> note.has(Sign.INVERTED_FERMATA);
          case HARMONIC -> note.shape().head() == NoteShape.Head.DIAMOND;
          default -> false;
        };
  }

  private static double top(Stem stem) {
    double heads = Stem.y(stem.highest()) - 4;
    return stem.stemmed() && stem.up ? Math.min(heads, stem.tip) : heads;
  }

  private static double bottom(Stem stem) {
    double heads = Stem.y(stem.lowest()) + 4;
    return stem.stemmed() && !stem.up ? Math.max(heads, stem.tip) : heads;
  }

  private void addSpots(
      int piece, Column column, Stem stem, double reach, Map<NoteAddress, DrawnNote> spots) {
    boolean near = stem.notes.stream().anyMatch(note -> !note.signs().isEmpty());
    boolean over = OVER.stream().anyMatch(sign -> has(stem, sign));
    double space = near ? 8 : 0;
    double top = top(stem) - (stem.up ? 0 : space);
    for (int i = 0; i < stem.notes.size(); i++) {
      spots.put(
          stem.notes.get(i).address(),
          new DrawnNote(
              piece,
              column.x,
              Stem.y(stem.steps.get(i)),
              over ? Math.min(top, reach) : top,
              bottom(stem) + (stem.up ? space : 0),
              stem.up));
    }
  }
}
