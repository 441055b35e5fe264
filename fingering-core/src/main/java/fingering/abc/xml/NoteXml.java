package fingering.abc.xml;

import fingering.abc.reading.MeasureItem.Head;
import fingering.abc.reading.MeasureItem.NoteOrRest;
import fingering.abc.reading.MeasureItem.Tuplet;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decoration.Kind;
import fingering.abc.syntax.NoteValue;
import fingering.tables.Pitch;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Writes notes, chords and rests as MusicXML 4.0, with elements in the order of its schema. */
final class NoteXml {
  private final XmlNode measure;
  private final BigFraction divisions;
  private final Beams beams;

  /**
   * Writes into a measure.
   *
   * @param divisions divisions of a quarter note
   */
  NoteXml(XmlNode measure, BigFraction divisions, Beams beams) {
    this.measure = measure;
    this.divisions = divisions;
    this.beams = beams;
  }

  /** One of the note values that are tied together to make a length. */
  private record Piece(NoteOrRest item, Optional<NoteValue> value, boolean first, boolean last) {}

  /** Writes a note, a chord or a rest. */
  void write(NoteOrRest item) {
    List<NoteValue> values = item.values();
    if (values.isEmpty()) {
      rest(new Piece(item, Optional.empty(), true, true));
      return;
    }
    for (int i = 0; i < values.size(); i++) {
      Piece piece = new Piece(item, Optional.of(values.get(i)), i == 0, i == values.size() - 1);
      if (item.rest()) {
        rest(piece);
      } else {
        for (int head = 0; head < item.heads().size(); head++) {
          note(piece, head);
        }
      }
    }
  }

  private void rest(Piece piece) {
    XmlNode note = measure.add("note");
    XmlNode rest = note.add("rest");
    if (piece.value.isEmpty()) {
      rest.with("measure", "yes");
    }
    note.add("duration", duration(piece));
    note.add("voice", 1);
    value(note, piece);
    note.addUnlessEmpty("notations", notations -> signs(notations, piece, 0));
  }

  private void note(Piece piece, int index) {
    NoteOrRest item = piece.item;
    Head head = item.heads().get(index);
    boolean tieStop = head.tieStop() || !piece.first;
    boolean tieStart = head.tieStart() || !piece.last;
    XmlNode note = measure.add("note");
    if (item.grace()) {
      XmlNode grace = note.add("grace");
      if (item.slashed()) {
        grace.with("slash", "yes");
      }
    }
    if (index > 0) {
      note.add("chord");
    }
    pitch(note, head.pitch());
    if (!item.grace()) {
      note.add("duration", duration(piece));
    }
    if (tieStop) {
      note.add("tie").with("type", "stop");
    }
    if (tieStart) {
      note.add("tie").with("type", "start");
    }
    note.add("voice", 1);
    value(note, piece, head.accidental() && piece.first ? Optional.of(head) : Optional.empty());
    if (index == 0) {
      int number = 1;
      for (String beam : beams.of(item)) {
        note.add("beam", beam).with("number", number++);
      }
    }
    note.addUnlessEmpty(
        "notations",
        notations -> {
          if (tieStop) {
            notations.add("tied").with("type", "stop");
          }
          if (tieStart) {
            notations.add("tied").with("type", "start");
          }
          signs(notations, piece, index);
        });
  }

  private static void pitch(XmlNode note, Pitch pitch) {
    XmlNode node = note.add("pitch");
    node.add("step", pitch.letter());
    if (pitch.alter() != 0) {
      node.add("alter", pitch.alter());
    }
    node.add("octave", pitch.octave());
  }

  private BigFraction duration(Piece piece) {
    BigFraction time =
        piece
            .value
            .map(value -> value.quarters().multiply(shrink(piece.item)))
            .orElse(piece.item.length());
    return time.multiply(divisions);
  }

  private static BigFraction shrink(NoteOrRest item) {
    return item.tuplet()
        .map(tuplet -> BigFraction.of(tuplet.normal(), tuplet.actual()))
        .orElse(BigFraction.ONE);
  }

  private void value(XmlNode note, Piece piece) {
    value(note, piece, Optional.empty());
  }

  private void value(XmlNode note, Piece piece, Optional<Head> accidental) {
    piece.value.ifPresent(
        value -> {
          note.add("type", value.type());
          for (int dot = 0; dot < value.dots(); dot++) {
            note.add("dot");
          }
        });
    accidental.ifPresent(head -> note.add("accidental", sign(head.pitch().alter())));
    piece
        .item
        .tuplet()
        .ifPresent(
            tuplet -> {
              XmlNode changed = note.add("time-modification");
              changed.add("actual-notes", tuplet.actual());
              changed.add("normal-notes", tuplet.normal());
            });
  }

  private static String sign(int alter) {
    return switch (alter) {
      case -2 -> "flat-flat";
      case -1 -> "flat";
      case 0 -> "natural";
      case 1 -> "sharp";
      case 2 -> "double-sharp";
      default ->
          throw new IllegalArgumentException(
              "cannot print an alteration by " + alter + " semitones");
    };
  }

  private void signs(XmlNode notations, Piece piece, int index) {
    NoteOrRest item = piece.item;
    if (index == 0) {
      lines(notations, piece);
    }
    if (!piece.first) {
      return;
    }
    boolean first = index == 0;
    boolean highest = item.rest() || index == item.highest();
    notations.addUnlessEmpty(
        "ornaments",
        ornaments -> {
          signs(item, kind -> highest && kind == Kind.ORNAMENT)
              .forEach(s -> ornament(ornaments, s));
          if (highest && item.above().isPresent()) {
            ornaments.add("accidental-mark", sign(item.above().getAsInt()));
          }
        });
    notations.addUnlessEmpty(
        "technical",
        technical -> {
          signs(item, kind -> first && kind == Kind.BOWING).forEach(s -> add(technical, s));
          if (!item.rest()) {
            item.heads().get(index).signs().forEach(sign -> add(technical, sign));
          }
        });
    notations.addUnlessEmpty(
        "articulations",
        articulations ->
            signs(item, kind -> first && kind == Kind.ARTICULATION)
                .forEach(sign -> add(articulations, sign)));
    signs(item, kind -> kind == Kind.NOTATION)
        .filter(sign -> first || sign.element().equals("arpeggiate"))
        .forEach(sign -> add(notations, sign));
  }

  private static Stream<Decoration> signs(NoteOrRest item, Predicate<Kind> wanted) {
    return item.signs().stream().filter(sign -> wanted.test(sign.kind()));
  }

  private static void lines(XmlNode notations, Piece piece) {
    NoteOrRest item = piece.item;
    if (piece.last) {
      item.slurStops()
          .forEach(number -> notations.add("slur").with("type", "stop").with("number", number));
    }
    if (piece.first) {
      item.slurStarts()
          .forEach(number -> notations.add("slur").with("type", "start").with("number", number));
    }
    if (piece.first && item.tuplet().map(Tuplet::first).orElse(false)) {
      notations.add("tuplet").with("type", "start");
    }
    if (piece.last && item.tuplet().map(Tuplet::last).orElse(false)) {
      notations.add("tuplet").with("type", "stop");
    }
  }

  private static void ornament(XmlNode ornaments, Decoration sign) {
    if (sign.element().equals("wavy-line") && sign.attribute().equals("type=start")) {
      ornaments.add("trill-mark");
    }
    add(ornaments, sign);
  }

  /** Adds a decoration as its MusicXML element. */
  static void add(XmlNode parent, Decoration sign) {
    XmlNode node = parent.add(sign.element(), sign.text());
    int equals = sign.attribute().indexOf('=');
    if (equals > 0) {
      node.with(sign.attribute().substring(0, equals), sign.attribute().substring(equals + 1));
    }
  }
}
