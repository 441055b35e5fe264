package fingering.fingerboard;

import com.google.common.base.CharMatcher;
import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Tuning;
import fingering.tables.Tunings;
import fingering.userfile.KnownKeys;
import fingering.userfile.UserFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a file with a user's own tuning: the instrument and its open strings at sounding pitch,
 * from the highest. A string with an extension also has its lowest pitch: {@code E1 down to C1}. A
 * name is optional; without one the tuning is named after the file.
 */
public final class TuningFile {
  private static final KnownKeys KEYS =
      KnownKeys.of(
          "a tuning file", "instrument: viola", "strings: [A4, D4, G3, C3]", "name: a-string-to-g");

  private static final Pattern EXTENSION = Pattern.compile("(.+?)\\s+down\\s+to\\s+(.+)");
  private static final CharMatcher NAME =
      CharMatcher.inRange('a', 'z').or(CharMatcher.inRange('0', '9'));

  private TuningFile() {}

  /**
   * Reads the text of a file.
   *
   * @param file the name of the file, for messages and for a tuning without a name
   * @param known the instruments for which it may be
   * @throws FingeringException if the text cannot be read, the instrument is unknown, or the name
   *     is that of another tuning of it; the message is one sentence with the line
   */
  public static Tuning parse(String file, String text, Instruments known) {
    UserFields fields = UserFields.parse(file, text, KEYS);
    Instrument instrument =
        fields.value("instrument", known::named).orElseThrow(() -> fields.missing("instrument"));
    ImmutableList<OpenString> all =
        fields.list("strings", new Strings()::next).orElseThrow(() -> fields.missing("strings"));
    return fields
        .value("name", name -> Tunings.own(known, instrument, name, all))
        .orElseGet(() -> named(fields, () -> Tunings.own(known, instrument, name(file), all)));
  }

  private static Tuning named(UserFields fields, Supplier<Tuning> tuning) {
    try {
      return tuning.get();
    } catch (FingeringException e) {
      throw fields.refusal(e.getMessage() + ", such as 'name: my-tuning'");
    }
  }

  /** The name of a file without its extension, as the name of a tuning. */
  private static String name(String file) {
    String last = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    String bare = last.lastIndexOf('.') > 0 ? last.substring(0, last.lastIndexOf('.')) : last;
    String name = NAME.negate().trimAndCollapseFrom(bare.toLowerCase(Locale.ROOT), '-');
    return name.isEmpty() ? "own" : name;
  }

  /** Reads the strings, from the highest. */
  private static final class Strings {
    private final List<OpenString> above = new ArrayList<>();

    OpenString next(String text) {
      Matcher extended = EXTENSION.matcher(text.strip());
      boolean extension = extended.matches();
      Pitch open = Pitch.parse(extension ? extended.group(1) : text);
      Pitch lowest = extension ? Pitch.parse(extended.group(2)) : open;
      OpenString string = new OpenString(above.size() + 1, open, lowest);
      if (!above.isEmpty()) {
        Tunings.requireLower(above.get(above.size() - 1), string);
      }
      above.add(string);
      return string;
    }
  }
}
