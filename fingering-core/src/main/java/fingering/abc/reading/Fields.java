package fingering.abc.reading;

import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decorations;
import fingering.abc.syntax.FieldWord;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.MeasureAccidentals.Reach;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the fields that say how notes are read, in the header and later (ABC 2.1). */
final class Fields {
  private static final Pattern LENGTH = Pattern.compile("1(?:/(\\d{1,3}))?");
  private static final Pattern SYMBOL =
      Pattern.compile("([H-Wh-w~])\\s*=\\s*(?:!([^!]+)!|([^!\\s]+))");
  private static final Pattern REACH = Pattern.compile("propagate-accidentals\\s+(.*)");
  private static final int SHORTEST = 256;

  private Fields() {}

  /** What holds after a K: field. */
  static NoteDefaults key(NoteDefaults setting, LineCursor content) {
    List<FieldWord> words = FieldWord.all(content);
    boolean clefOnly = !words.isEmpty() && words.stream().allMatch(AbcClef::speaks);
    return clefs(clefOnly ? setting : setting.withKey(AbcKey.read(words)), words);
  }

  /** What holds after a V: field, whose first word is the name of the voice. */
  static NoteDefaults voice(NoteDefaults setting, List<FieldWord> words) {
    return clefs(setting, words.stream().skip(1).toList());
  }

  private static NoteDefaults clefs(NoteDefaults setting, List<FieldWord> words) {
    NoteDefaults changed = setting;
    for (FieldWord word : words) {
      if (AbcClef.speaks(word)) {
        changed = changed.withClef(changed.clef().with(word));
      }
    }
    return changed;
  }

  /** The unit note length, in quarter notes, of an L: field. */
  static BigFraction unit(LineCursor content) {
    content.takeBlanks();
    LineCursor start = content.back(0);
    String text = content.rest().replaceAll("\\s*/\\s*", "/");
    Matcher length = LENGTH.matcher(text);
    int below = length.matches() && length.group(1) != null ? Integer.parseInt(length.group(1)) : 1;
    if (!length.matches() || Integer.bitCount(below) != 1 || below > SHORTEST) {
      throw start.wrong("'%s' is no note length: write L:1/4, L:1/8 or L:1/16.".formatted(text));
    }
    return BigFraction.of(4, below);
  }

  /** What holds after a U: field. */
  static NoteDefaults symbol(NoteDefaults setting, LineCursor content) {
    content.takeBlanks();
    LineCursor start = content.back(0);
    String text = content.rest();
    Matcher symbol = SYMBOL.matcher(text);
    if (!symbol.matches()) {
      throw start.wrong("'%s' gives no letter a sign: write U:W=!trill!.".formatted(text));
    }
    String name = symbol.group(2) == null ? symbol.group(3) : symbol.group(2);
    Optional<Decoration> sign =
        name.equals("nil") || name.equals("none")
            ? Optional.empty()
            : Optional.of(Decorations.named(name, start));
    return setting.withSymbol(symbol.group(1).charAt(0), sign);
  }

  /** What holds after a word to programs; most are for those that print or play. */
  static NoteDefaults directive(NoteDefaults setting, LineCursor content) {
    content.takeBlanks();
    LineCursor start = content.back(0);
    Matcher reach = REACH.matcher(content.rest());
    if (!reach.matches()) {
      return setting;
    }
    return setting.withReach(
        switch (reach.group(1)) {
          case "not" -> Reach.NOT;
          case "octave" -> Reach.OCTAVE;
          case "pitch" -> Reach.PITCH;
          default ->
              throw start.wrong(
                  "accidentals propagate not, octave or pitch: write one of these words.");
        });
  }

  /** Refuses a field that would change the notes in a way that is not read. */
  static void refuse(char letter, LineCursor field) {
    switch (letter) {
      case 'm' -> throw field.wrong("macros (m:) are not read: write the notes out.");
      case 's' ->
          throw field.wrong(
              "lines of symbols (s:) are not read: write each sign before its note, as in !1!D.");
      case '+' ->
          throw field.wrong(
              "a field cannot be continued on another line here: write it on one line.");
      default -> {}
    }
  }
}
