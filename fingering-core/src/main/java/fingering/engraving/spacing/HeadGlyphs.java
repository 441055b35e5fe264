package fingering.engraving.spacing;

import fingering.engraving.glyph.Glyph;
import fingering.engraving.notes.Chord;
import fingering.music.print.NoteShape.Head;
import fingering.music.print.PrintedNote;

/** The shapes of noteheads, rests and accidentals. */
public final class HeadGlyphs {
  private HeadGlyphs() {}

  /** The notehead of a note. */
  public static Glyph head(PrintedNote note) {
    if (note.shape().head() == Head.DIAMOND) {
      return note.value().part() < 4 ? Glyph.HEAD_DIAMOND_OPEN : Glyph.HEAD_DIAMOND_BLACK;
    }
    return switch (note.value().part()) {
      case 0 -> Glyph.HEAD_BREVE;
      case 1 -> Glyph.HEAD_WHOLE;
      case 2 -> Glyph.HEAD_HALF;
      default -> Glyph.HEAD_BLACK;
    };
  }

  /** The sign of a rest. */
  public static Glyph rest(PrintedNote note) {
    return switch (note.value().part()) {
      case 0 -> Glyph.REST_BREVE;
      case 1 -> Glyph.REST_WHOLE;
      case 2 -> Glyph.REST_HALF;
      case 4 -> Glyph.REST_QUARTER;
      case 8 -> Glyph.REST_8;
      case 16 -> Glyph.REST_16;
      case 32 -> Glyph.REST_32;
      case 64 -> Glyph.REST_64;
      default -> Glyph.REST_128;
    };
  }

  /** The accidental that alters by some semitones, -2 to 2. */
  public static Glyph accidental(int alter) {
    return switch (alter) {
      case -2 -> Glyph.DOUBLE_FLAT;
      case -1 -> Glyph.FLAT;
      case 0 -> Glyph.NATURAL;
      case 1 -> Glyph.SHARP;
      default -> Glyph.DOUBLE_SHARP;
    };
  }

  /** The flags of a chord with one or more flags. */
  public static Glyph flag(Chord chord) {
    boolean up = chord.up();
    return switch (chord.flags()) {
      case 1 -> up ? Glyph.FLAG_8_UP : Glyph.FLAG_8_DOWN;
      case 2 -> up ? Glyph.FLAG_16_UP : Glyph.FLAG_16_DOWN;
      case 3 -> up ? Glyph.FLAG_32_UP : Glyph.FLAG_32_DOWN;
      case 4 -> up ? Glyph.FLAG_64_UP : Glyph.FLAG_64_DOWN;
      default -> up ? Glyph.FLAG_128_UP : Glyph.FLAG_128_DOWN;
    };
  }

  /** The width of the heads of a chord. */
  public static double width(Chord chord) {
    return head(chord.lead()).width() * chord.scale();
  }
}
