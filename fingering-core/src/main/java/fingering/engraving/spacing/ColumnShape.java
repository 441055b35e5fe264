package fingering.engraving.spacing;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Kind;
import fingering.engraving.notes.Accidentals;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.Chord.Layer;
import fingering.engraving.notes.Column;
import fingering.music.NoteAddress;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Sign;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A column with the places of its shapes. x = 0 is the left edge of the heads that stand in their
 * normal place.
 *
 * @param column the notes
 * @param signs heads, accidentals, dots, rests, changes of clef and key
 * @param heads the x of the left edge of each notehead
 * @param left how far it reaches to the left of 0, 0 or more
 * @param right how far it reaches to the right of 0
 */
public record ColumnShape(
    Column column,
    ImmutableList<Placed> signs,
    ImmutableMap<NoteAddress, Double> heads,
    double left,
    double right) {
  private static final double ACCIDENTAL_GAP = 0.2;
  private static final double BETWEEN_ACCIDENTALS = 0.1;
  private static final double PARENTHESIS_GAP = 0.1;
  private static final double DOT_GAP = 0.3;
  private static final double BETWEEN_DOTS = 0.2;
  private static final double CHANGE_GAP = 0.5;

  /** The part of a flag's width that keeps the next note away. */
  private static final double FLAG_SHARE = 0.7;

  /** Places the shapes of a column. */
  public static ColumnShape of(Column column, Accidentals accidentals, PrintedMeasure measure) {
    return new Builder(column, accidentals, measure).build();
  }

  /** The x of the stem's middle; for chords without a stem, of the heads' middle. */
  public double stem(Chord chord) {
    double head = chord.rest() ? 0 : base(chord);
    if (!chord.stemmed()) {
      return head + HeadGlyphs.width(chord) / 2;
    }
    double half = EngravingDefaults.STEM / 2;
    return chord.up() ? head + HeadGlyphs.width(chord) - half : head + half;
  }

  /** The x of the left edge of a chord's heads on the normal side of the stem. */
  public double base(Chord chord) {
    int normal = chord.up() ? 0 : chord.notes().size() - 1;
    Double x = heads.get(chord.notes().get(normal).address());
    return x == null ? 0 : x;
  }

  /** The x of the middle of a chord's heads. */
  public double middle(Chord chord) {
    if (chord.rest()) {
      return HeadGlyphs.rest(chord.lead()).width() / 2;
    }
    return base(chord) + HeadGlyphs.width(chord) / 2;
  }

  private static final class Builder {
    private final Column column;
    private final Accidentals accidentals;
    private final PrintedMeasure measure;
    private final List<Placed> signs = new ArrayList<>();
    private final List<Box> ledgers = new ArrayList<>();
    private final Map<NoteAddress, Double> heads = new HashMap<>();

    Builder(Column column, Accidentals accidentals, PrintedMeasure measure) {
      this.column = column;
      this.accidentals = accidentals;
      this.measure = measure;
    }

    ColumnShape build() {
      Map<Chord, Double> offsets = offsets();
      boolean same = sameRests();
      for (Chord chord : column.chords()) {
        if (chord.rest()) {
          if (!same || chord.equals(column.chords().get(0))) {
            rest(chord, same);
          }
        } else {
          heads(chord, offsets.getOrDefault(chord, 0.0));
        }
      }
      double right = heads.isEmpty() ? 0 : reach();
      for (Chord chord : column.chords()) {
        if (!chord.rest()) {
          dots(chord, right);
        }
      }
      accidentals();
      arpeggio();
      double headsLeft = signs.stream().mapToDouble(sign -> sign.box().left()).min().orElse(0);
      changes(headsLeft);
      double left = signs.stream().mapToDouble(sign -> sign.box().left()).min().orElse(0);
      left = Math.min(left, ledgers.stream().mapToDouble(Box::left).min().orElse(0));
      double most = signs.stream().mapToDouble(sign -> sign.box().right()).max().orElse(0);
      most = Math.max(most, ledgers.stream().mapToDouble(Box::right).max().orElse(0));
      for (Chord chord : column.chords()) {
        if (chord.stemmed() && chord.flags() > 0 && chord.up() && flagged(chord)) {
          double flag = HeadGlyphs.flag(chord).width() * chord.scale() * FLAG_SHARE;
          most = Math.max(most, offsets.getOrDefault(chord, 0.0) + HeadGlyphs.width(chord) + flag);
        }
      }
      return new ColumnShape(
          column,
          ImmutableList.copyOf(signs),
          ImmutableMap.copyOf(heads),
          Math.max(0, -left),
          most);
    }

    private static boolean flagged(Chord chord) {
      return chord.beams().isEmpty();
    }

    private double reach() {
      return signs.stream()
          .filter(sign -> sign.kind() == Kind.HEAD)
          .mapToDouble(sign -> sign.box().right())
          .max()
          .orElse(0);
    }

    /** How far the chords of the lower voice are moved right, out of the way of the upper one. */
    private Map<Chord, Double> offsets() {
      Map<Chord, Double> offsets = new HashMap<>();
      List<Chord> upper =
          column.chords().stream().filter(c -> !c.rest() && c.layer() == Layer.UPPER).toList();
      List<Chord> lower =
          column.chords().stream().filter(c -> !c.rest() && c.layer() == Layer.LOWER).toList();
      if (upper.isEmpty() || lower.isEmpty()) {
        return offsets;
      }
      double width = HeadGlyphs.width(upper.get(0));
      for (Chord chord : lower) {
        int apart = upper.get(0).lowest() - chord.highest();
        boolean shared =
            apart == 0
                && HeadGlyphs.head(chord.lead()) == HeadGlyphs.head(upper.get(0).lead())
                && chord.lead().value().dots() == upper.get(0).lead().value().dots();
        if (apart < 0 || (apart == 0 && !shared)) {
          offsets.put(chord, width + 0.25);
        } else if (apart == 1) {
          offsets.put(chord, width - EngravingDefaults.STEM);
        }
      }
      return offsets;
    }

    private void heads(Chord chord, double offset) {
      double scale = chord.scale();
      for (int i = 0; i < chord.notes().size(); i++) {
        PrintedNote note = chord.notes().get(i);
        Glyph glyph = HeadGlyphs.head(note);
        double x = offset + second(chord, i) * (glyph.width() * scale - EngravingDefaults.STEM);
        int step = chord.steps().get(i);
        signs.add(new Placed(Kind.HEAD, glyph, x, Chord.y(step), scale));
        heads.put(note.address(), x);
        if (step > 9 || step < -1) {
          double reach = EngravingDefaults.LEDGER_EXTENSION * scale;
          ledgers.add(
              new Box(
                  x - reach,
                  Chord.y(step),
                  x + glyph.width() * scale + reach,
                  Chord.y(step) + 0.1));
        }
      }
    }

    /**
     * The side of the stem on which a note stands that is a second from another: 1 to the right of
     * an upward stem, -1 to the left of a downward one, 0 for the normal side.
     */
    private static int second(Chord chord, int index) {
      int run = 0;
      if (chord.up()) {
        for (int i = index; i > 0 && chord.steps().get(i) - chord.steps().get(i - 1) <= 1; i--) {
          run++;
        }
        return run % 2;
      }
      for (int i = index;
          i + 1 < chord.steps().size() && chord.steps().get(i + 1) - chord.steps().get(i) <= 1;
          i++) {
        run++;
      }
      return -(run % 2);
    }

    private void dots(Chord chord, double right) {
      Set<Integer> taken = new HashSet<>();
      for (int i = chord.notes().size() - 1; i >= 0; i--) {
        int step = chord.steps().get(i);
        boolean down = chord.layer() == Layer.LOWER;
        int at = Math.floorMod(step, 2) == 1 ? step : down ? step - 1 : step + 1;
        while (!taken.add(at)) {
          at -= 2;
        }
        double x = right + DOT_GAP;
        for (int dot = 0; dot < chord.notes().get(i).value().dots(); dot++) {
          signs.add(new Placed(Kind.DOT, Glyph.DOT, x, Chord.y(at), chord.scale()));
          x += Glyph.DOT.width() + BETWEEN_DOTS;
        }
      }
    }

    /** Whether all voices have the same rest: one is drawn for all. */
    private boolean sameRests() {
      return column.rests()
          && (column.chords().size() > 1 || column.chords().get(0).layer() == Layer.ALONE)
          && column.chords().stream().map(chord -> chord.lead().value()).distinct().count() == 1;
    }

    private void rest(Chord chord, boolean alone) {
      PrintedNote note = chord.lead();
      if (note.value().wholeMeasure()) {
        return;
      }
      Glyph glyph = HeadGlyphs.rest(note);
      double y = RestPlaces.y(column, chord, alone);
      signs.add(new Placed(Kind.REST, glyph, 0, y, chord.scale()));
      double x = glyph.width() + DOT_GAP;
      for (int dot = 0; dot < note.value().dots(); dot++) {
        double line = glyph == Glyph.REST_WHOLE ? y + 0.5 : y - 0.5;
        signs.add(new Placed(Kind.DOT, Glyph.DOT, x, line, 1));
        x += Glyph.DOT.width() + BETWEEN_DOTS;
      }
    }

    private record Altered(int step, Glyph glyph, double scale, boolean parentheses) {}

    /** Accidentals from the outside in, each as near to its head as the others allow. */
    private void accidentals() {
      List<Altered> all = new ArrayList<>();
      for (Chord chord : column.chords()) {
        for (int i = 0; i < chord.notes().size(); i++) {
          PrintedNote note = chord.notes().get(i);
          int step = chord.steps().get(i);
          accidentals
              .shown(note)
              .ifPresent(
                  alter ->
                      all.add(
                          new Altered(
                              step,
                              HeadGlyphs.accidental(alter),
                              chord.scale(),
                              note.accidental().isPresent()
                                  && note.accidental().get().parentheses())));
        }
      }
      all.sort((a, b) -> Integer.compare(b.step(), a.step()));
      List<Box> taken = new ArrayList<>(ledgers);
      signs.stream().filter(sign -> sign.kind() == Kind.HEAD).map(Placed::box).forEach(taken::add);
      double gap = ACCIDENTAL_GAP;
      for (int i = 0; !all.isEmpty(); i++) {
        Altered one = all.remove(i % 2 == 0 ? 0 : all.size() - 1);
        Box shape = shape(one);
        double x = -gap - shape.right();
        Box box = shape.moved(x, Chord.y(one.step()));
        for (boolean moved = true; moved; ) {
          moved = false;
          for (Box other : taken) {
            Box wide =
                new Box(
                    other.left() - BETWEEN_ACCIDENTALS,
                    other.top(),
                    other.right() + BETWEEN_ACCIDENTALS,
                    other.bottom());
            if (box.overlaps(wide)) {
              double to = wide.left() - shape.right() - 0.01;
              box = shape.moved(to, Chord.y(one.step()));
              x = to;
              moved = true;
            }
          }
        }
        taken.add(box);
        signs.add(new Placed(Kind.ACCIDENTAL, one.glyph(), x, Chord.y(one.step()), one.scale()));
        if (one.parentheses()) {
          double y = Chord.y(one.step());
          double scale = one.scale();
          Box sign = one.glyph().box().scaled(scale);
          double left = x + sign.left() - PARENTHESIS_GAP - Glyph.PAREN_LEFT.width() * scale;
          double right = x + sign.right() + PARENTHESIS_GAP;
          signs.add(new Placed(Kind.ACCIDENTAL, Glyph.PAREN_LEFT, left, y, scale));
          signs.add(new Placed(Kind.ACCIDENTAL, Glyph.PAREN_RIGHT, right, y, scale));
        }
      }
    }

    /** The box of an accidental, with its parentheses. */
    private static Box shape(Altered sign) {
      Box box = sign.glyph().box().scaled(sign.scale());
      double more =
          sign.parentheses() ? Glyph.PAREN_LEFT.width() * sign.scale() + PARENTHESIS_GAP : 0;
      return new Box(box.left() - more, box.top(), box.right() + more, box.bottom());
    }

    /** The wavy line before a broken chord. */
    private void arpeggio() {
      boolean broken =
          column.chords().stream()
              .anyMatch(
                  chord ->
                      chord.has(Sign.ARPEGGIO)
                          || chord.has(Sign.ARPEGGIO_UP)
                          || chord.has(Sign.ARPEGGIO_DOWN));
      if (!broken) {
        return;
      }
      double edge = signs.stream().mapToDouble(sign -> sign.box().left()).min().orElse(0);
      double top = column.chords().stream().mapToDouble(Chord::top).min().orElse(0);
      double bottom = column.chords().stream().mapToDouble(Chord::bottom).max().orElse(4);
      double x = edge - 0.35 - Glyph.ARPEGGIO.box().right();
      for (double y = bottom + 0.5; y > top - 0.4; y -= 1) {
        signs.add(new Placed(Kind.ARTICULATION, Glyph.ARPEGGIO, x, y, 1));
      }
    }

    private void changes(double edge) {
      double x = edge;
      if (column.key().isPresent()) {
        ImmutableList<Placed> key =
            Signatures.key(
                measure.clefAt(column.onset()),
                column.key().get().fifths(),
                column.key().get().before(),
                column.key().get().cancelled());
        x -= CHANGE_GAP + Signatures.width(key);
        signs.addAll(Signatures.moved(key, x));
      }
      if (column.clef().isPresent()) {
        ImmutableList<Placed> clef = Signatures.clef(column.clef().get(), true);
        x -= CHANGE_GAP + Signatures.width(clef);
        signs.addAll(Signatures.moved(clef, x));
      }
    }
  }
}
