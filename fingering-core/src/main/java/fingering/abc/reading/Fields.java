package fingering.abc.reading;

import fingering.abc.reading.MeasureAccidentals.Propagation;
import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decorations;
import fingering.abc.syntax.FieldWord;
import fingering.abc.syntax.LineCursor;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the fields that change the defaults of notes, in the header and in the body (ABC 2.1). */
final class Fields {
  private static final Pattern LENGTH = Pattern.compile("1(?:/(\\d{1,3}))?");
  private static final Pattern SYMBOL =
      Pattern.compile("([H-Wh-w~])\\s*=\\s*(?:!([^!]+)!|([^!\\s]+))");
  private static final Pattern PROPAGATION = Pattern.compile("propagate-accidentals\\s+(.*)");
  private static final int SHORTEST = 256;

  private Fields() {}

  /** Returns the defaults after a K: field. */
  static NoteDefaults key(NoteDefaults defaults, LineCursor content) {
    List<FieldWord> words = FieldWord.all(content);
    boolean clefOnly = !words.isEmpty() && words.stream().allMatch(AbcClef::isClefWord);
    return clefs(clefOnly ? defaults : defaults.withKey(AbcKey.read(words)), words);
  }

  /** Returns the defaults after a V: field, whose first word is the name of the voice. */
  static NoteDefaults voice(NoteDefaults defaults, List<FieldWord> words) {
    return clefs(defaults, words.stream().skip(1).toList());
  }

  private static NoteDefaults clefs(NoteDefaults defaults, List<FieldWord> words) {
    NoteDefaults changed = defaults;
    for (FieldWord word : words) {
      if (AbcClef.isClefWord(word)) {
        changed = changed.withClef(changed.clef().with(word));
      }
    }
    return changed;
  }

  /** Returns the unit note length, in quarter notes, of an L: field. */
  static BigFraction unit(LineCursor content) {
    content.takeBlanks();
    LineCursor start = content.copy();
    String text = content.rest().replaceAll("\\s*/\\s*", "/");
    Matcher length = LENGTH.matcher(text);
    int denominator =
        length.matches() && length.group(1) != null ? Integer.parseInt(length.group(1)) : 1;
    if (!length.matches() || Integer.bitCount(denominator) != 1 || denominator > SHORTEST) {
      throw start.error("'%s' is not a note length: write L:1/4, L:1/8 or L:1/16.".formatted(text));
    }
    return BigFraction.of(4, denominator);
  }

  /** Returns the defaults after a U: field. */
  static NoteDefaults symbol(NoteDefaults defaults, LineCursor content) {
    content.takeBlanks();
    LineCursor start = content.copy();
    String text = content.rest();
    Matcher symbol = SYMBOL.matcher(text);
    if (!symbol.matches()) {
      throw start.error(
          "'%s' does not assign a decoration to a letter: write U:W=!trill!.".formatted(text));
    }
    String name = symbol.group(2) == null ? symbol.group(3) : symbol.group(2);
    Optional<Decoration> sign =
        name.equals("nil") || name.equals("none")
            ? Optional.empty()
            : Optional.of(Decorations.named(name, start));
    return defaults.withSymbol(symbol.group(1).charAt(0), sign);
  }

  /**
   * Returns the defaults after a directive. Most directives are for typesetting and playback, and
   * are ignored.
   */
  static NoteDefaults directive(NoteDefaults defaults, LineCursor content) {
    content.takeBlanks();
    LineCursor start = content.copy();
    Matcher propagation = PROPAGATION.matcher(content.rest());
    if (!propagation.matches()) {
      return defaults;
    }
    return defaults.withPropagation(
        switch (propagation.group(1)) {
          case "not" -> Propagation.NOT;
          case "octave" -> Propagation.OCTAVE;
          case "pitch" -> Propagation.PITCH;
          default ->
              throw start.error(
                  "propagate-accidentals is followed by not, octave or pitch: write one of these words.");
        });
  }

  /** Refuses a field that would change the notes but is not supported. */
  static void refuse(char letter, LineCursor field) {
    switch (letter) {
      case 'm' -> throw field.error("macros (m:) are not supported: write the notes out.");
      case 's' ->
          throw field.error(
              "symbol lines (s:) are not supported: write each decoration before its note, as in !1!D.");
      case '+' ->
          throw field.error(
              "continued fields (+:) are not supported: write the field on one line.");
      default -> {}
    }
  }
}
