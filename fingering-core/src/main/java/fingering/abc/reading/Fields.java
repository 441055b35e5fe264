package fingering.abc.reading;

import fingering.abc.reading.MeasureAccidentals.Propagation;
import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decorations;
import fingering.abc.syntax.FieldWord;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the fields that change the defaults of notes, in the header and in the body (ABC 2.1). */
final class Fields {
  private static final Pattern LENGTH = Pattern.compile("1(?:/(\\d{1,3}))?");
  private static final Pattern SYMBOL =
      Pattern.compile("([H-Wh-w~])\\s*=\\s*(?:!([^!]+)!|([^!\\s]+))");
  private static final Pattern PROPAGATION = Pattern.compile("propagate-accidentals\\s+(.*)");
  private static final Pattern FIRST_MEASURE =
      Pattern.compile("setbarnb(?:\\s+([1-9]\\d{0,3})|.*)");
  private static final int SHORTEST = 256;

  /** Fields that do not change the notes; E: is of older versions. */
  private static final String INFORMATION = "ABCDEFGHNOPRrSTWwXZ";

  private Fields() {}

  /** Returns the defaults after a K: field. */
  static NoteDefaults key(NoteDefaults defaults, LineCursor content, Repairs repairs) {
    List<FieldWord> words = FieldWord.all(content, repairs);
    boolean clefOnly = !words.isEmpty() && words.stream().allMatch(AbcClef::isClefWord);
    NoteDefaults changed =
        clefOnly ? defaults : defaults.withKey(AbcKey.read(words, defaults.key(), repairs));
    return clefs(changed, words, repairs);
  }

  /** Returns the defaults after a V: field, whose first word is the name of the voice. */
  static NoteDefaults voice(NoteDefaults defaults, List<FieldWord> words, Repairs repairs) {
    return clefs(defaults, words.stream().skip(1).toList(), repairs);
  }

  private static NoteDefaults clefs(NoteDefaults defaults, List<FieldWord> words, Repairs repairs) {
    NoteDefaults changed = defaults;
    for (FieldWord word : words) {
      if (AbcClef.isClefWord(word)) {
        changed = changed.withClef(changed.clef().with(word, repairs));
      }
    }
    return changed;
  }

  /** Returns the unit note length, in quarter notes, of an L: field; empty if it is not valid. */
  static Optional<BigFraction> unit(LineCursor content, Repairs repairs) {
    content.takeBlanks();
    LineCursor start = content.copy();
    String text = content.rest().replaceAll("\\s*/\\s*", "/");
    Matcher length = LENGTH.matcher(text);
    int denominator =
        length.matches() && length.group(1) != null ? Integer.parseInt(length.group(1)) : 1;
    if (!length.matches() || Integer.bitCount(denominator) != 1 || denominator > SHORTEST) {
      repairs.add(
          start,
          "'%s' is not a note length, as in L:1/4, L:1/8 or L:1/16; it was left out"
              .formatted(text));
      return Optional.empty();
    }
    return Optional.of(BigFraction.of(4, denominator));
  }

  /** Returns the defaults after a U: field. */
  static NoteDefaults symbol(NoteDefaults defaults, LineCursor content, Repairs repairs) {
    content.takeBlanks();
    LineCursor start = content.copy();
    String text = content.rest();
    Matcher symbol = SYMBOL.matcher(text);
    if (!symbol.matches()) {
      repairs.add(
          start,
          "'%s' does not assign a decoration to a letter, as in U:W=!trill!; it was left out"
              .formatted(text));
      return defaults;
    }
    String name = symbol.group(2) == null ? symbol.group(3) : symbol.group(2);
    Optional<Decoration> sign =
        name.equals("nil") || name.equals("none")
            ? Optional.empty()
            : Decorations.named(name, start, repairs);
    return defaults.withSymbol(symbol.group(1).charAt(0), sign);
  }

  /**
   * Returns the defaults after a directive. Most directives are for typesetting and playback, and
   * are ignored.
   */
  static NoteDefaults directive(NoteDefaults defaults, LineCursor content, Repairs repairs) {
    content.takeBlanks();
    LineCursor start = content.copy();
    Matcher propagation = PROPAGATION.matcher(content.rest());
    if (!propagation.matches()) {
      return defaults;
    }
    return switch (propagation.group(1)) {
      case "not" -> defaults.withPropagation(Propagation.NOT);
      case "octave" -> defaults.withPropagation(Propagation.OCTAVE);
      case "pitch" -> defaults.withPropagation(Propagation.PITCH);
      default -> {
        repairs.add(
            start, "propagate-accidentals is followed by not, octave or pitch; it was left out");
        yield defaults;
      }
    };
  }

  /**
   * Returns the number of the first measure that a directive sets, as for an excerpt; empty if it
   * sets none.
   */
  static OptionalInt firstMeasure(LineCursor content, Repairs repairs) {
    content.takeBlanks();
    LineCursor start = content.copy();
    Matcher number = FIRST_MEASURE.matcher(content.rest());
    if (!number.matches()) {
      return OptionalInt.empty();
    }
    if (number.group(1) == null) {
      repairs.add(
          start,
          "setbarnb is followed by the number of the first measure, 1 to 9999; it was left out");
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(number.group(1)));
  }

  /** Adds a remark on a field that could change the notes but is not read, or is unknown. */
  static void leaveOut(char letter, LineCursor field, Repairs repairs) {
    switch (letter) {
      case 'm' -> repairs.add(field, "macros (m:) are not supported; the field was left out");
      case 's' -> repairs.add(field, "symbol lines (s:) are not supported; the line was left out");
      case '+' ->
          repairs.add(field, "continued fields (+:) are not supported; the line was left out");
      default -> {
        if (INFORMATION.indexOf(letter) < 0) {
          repairs.add(field, "the field %s: is not used in ABC; it was left out".formatted(letter));
        }
      }
    }
  }
}
