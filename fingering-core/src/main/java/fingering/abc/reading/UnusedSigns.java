package fingering.abc.reading;

import com.google.common.base.Ascii;
import fingering.abc.syntax.Decorations;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import fingering.abc.syntax.SourceLine;
import java.util.Set;
import java.util.function.IntPredicate;

/**
 * Leaves out the signs of a line of music that ABC does not use. The standard reserves some and
 * asks programs to ignore them (ABC 2.1, section 'Reserved characters'). They are left out before
 * the line is read, so that they cannot separate a note from its accidental or its length.
 */
final class UnusedSigns {
  private static final String USED = "ABCDEFGabcdefgxXyzZ0123456789 \t|:[](){}<>-_^=/,.'`$+&!\"\\";

  private UnusedSigns() {}

  /**
   * Returns the line without these signs. Words, decorations and fields in it stay as they are.
   *
   * @param symbols the letters that stand for decorations
   */
  static SourceLine leftOut(SourceLine line, Set<Character> symbols, Repairs repairs) {
    String text = line.text();
    // The line may give a letter its meaning.
    boolean defines = text.contains("[U:");
    IntPredicate used =
        sign ->
            USED.indexOf(sign) >= 0
                || symbols.contains((char) sign)
                || (defines && LineCursor.isLetter(sign));
    boolean[] drop = new boolean[text.length()];
    boolean any = false;
    for (int i = 0; i < text.length(); i++) {
      int end = quotedTo(text, i);
      if (end > i) {
        i = end - 1;
      } else if (!used.test(text.charAt(i))) {
        repairs.add(line, i, remark(text, i));
        drop[i] = true;
        any = true;
      }
    }
    return any ? line.without(drop) : line;
  }

  /** Returns the index after the words, the decoration or the field at an index. */
  private static int quotedTo(String text, int at) {
    return switch (text.charAt(at)) {
      case '"' -> wordsEnd(text, at) + 1;
      case '!', '+' -> Decorations.end(text, at) + 1;
      case '[' -> isField(text, at) ? fieldEnd(text, at) + 1 : at;
      default -> at;
    };
  }

  /** Returns whether a field in brackets is at an index. */
  static boolean isField(String text, int at) {
    return at + 2 < text.length()
        && LineCursor.isLetter(text.charAt(at + 1))
        && text.charAt(at + 2) == ':';
  }

  /**
   * Returns the index of the quotation mark that ends the words at an index. If there is none, the
   * words end before the next blank or bar line; the index is then the one before that.
   */
  static int wordsEnd(String text, int at) {
    int end = text.indexOf('"', at + 1);
    return end < 0 ? wordEnd(text, at) : end;
  }

  /** Returns the index of the bracket that ends the field at an index, as for words. */
  static int fieldEnd(String text, int at) {
    int end = text.indexOf(']', at + 1);
    int next = text.indexOf('[', at + 1);
    return end < 0 || (next >= 0 && next < end) ? wordEnd(text, at) : end;
  }

  private static int wordEnd(String text, int at) {
    int end = at;
    while (end + 1 < text.length() && " \t|".indexOf(text.charAt(end + 1)) < 0) {
      end++;
    }
    return end;
  }

  private static String remark(String text, int at) {
    return switch (text.charAt(at)) {
      case '#', '♯' -> accidentalAfterNote(text, at, "sharp", '^', "F");
      case '♭' -> accidentalAfterNote(text, at, "flat", '_', "B");
      default -> "the sign '%s' is not used in ABC; it was left out".formatted(text.charAt(at));
    };
  }

  /** The remark on an accidental typed after the letter of its note. */
  private static String accidentalAfterNote(
      String text, int at, String name, char sign, String example) {
    char before = at > 0 ? text.charAt(at - 1) : LineCursor.NOTHING;
    String note = "ABCDEFGabcdefg".indexOf(before) >= 0 ? String.valueOf(before) : example;
    return "a %s is written before its note, as %s%s for %s %s; it was left out"
        .formatted(name, sign, note, Ascii.toUpperCase(note), name);
  }
}
