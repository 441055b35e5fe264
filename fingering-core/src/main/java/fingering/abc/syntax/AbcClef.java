package fingering.abc.syntax;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableMap;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A clef and its transposition (ABC 2.1, clefs and transposition).
 *
 * @param sign G, C or F
 * @param line the line of the staff, 1 for the lowest
 * @param octaveChange 1 for an 8 above the clef, -1 for an 8 below, otherwise 0
 * @param octaveShift octaves from the typed to the written note
 * @param transpose semitones from the written to the sounding note
 */
public record AbcClef(String sign, int line, int octaveChange, int octaveShift, int transpose) {
  /** The clef of a tune without a clef. */
  public static final AbcClef TREBLE = new AbcClef("G", 2, 0, 0, 0);

  private static final ImmutableMap<String, AbcClef> NAMED =
      ImmutableMap.of(
          "treble", TREBLE,
          "alto", new AbcClef("C", 3, 0, 0, 0),
          "tenor", new AbcClef("C", 4, 0, 0, 0),
          "bass", new AbcClef("F", 4, 0, 0, 0));

  private static final Pattern NAME = Pattern.compile("([a-z]+)([1-5]?)([+-]8)?");
  private static final Pattern OCTAVES = Pattern.compile("[+-]?[0-4]");
  private static final Pattern SEMITONES = Pattern.compile("[+-]?\\d{1,2}");

  /** Returns whether a word specifies the clef. */
  public static boolean isClefWord(FieldWord word) {
    return switch (word.key()) {
      case "clef", "octave", "transpose", "middle", "m" -> true;
      case "" -> {
        Matcher name = NAME.matcher(Ascii.toLowerCase(word.value()));
        yield name.matches() && (NAMED.containsKey(name.group(1)) || name.group(1).equals("perc"));
      }
      default -> false;
    };
  }

  /** Returns this clef, changed by a word of a field; unchanged if the word is not valid. */
  public AbcClef with(FieldWord word, Repairs repairs) {
    return switch (word.key()) {
      case "octave" -> {
        if (!OCTAVES.matcher(word.value()).matches()) {
          yield ignored(word, "a number of octaves from -4 to 4", repairs);
        }
        yield new AbcClef(sign, line, octaveChange, Integer.parseInt(word.value()), transpose);
      }
      case "transpose" -> {
        if (!SEMITONES.matcher(word.value()).matches()) {
          yield ignored(word, "a number of semitones", repairs);
        }
        yield new AbcClef(sign, line, octaveChange, octaveShift, Integer.parseInt(word.value()));
      }
      case "middle", "m" -> ignored(word, "the name of a clef", repairs);
      default -> named(word, repairs);
    };
  }

  private AbcClef ignored(FieldWord word, String wanted, Repairs repairs) {
    repairs.add(word.start(), "'%s' is not %s; it was left out".formatted(word, wanted));
    return this;
  }

  private AbcClef named(FieldWord word, Repairs repairs) {
    Matcher name = NAME.matcher(Ascii.toLowerCase(word.value()));
    Optional<AbcClef> named =
        name.matches() ? Optional.ofNullable(NAMED.get(name.group(1))) : Optional.empty();
    if (named.isEmpty()) {
      return ignored(word, "a clef of a string part", repairs);
    }
    AbcClef clef = named.get();
    int onLine = name.group(2).isEmpty() ? clef.line : Integer.parseInt(name.group(2));
    int octave = name.group(3) == null ? 0 : name.group(3).startsWith("-") ? -1 : 1;
    return new AbcClef(clef.sign, onLine, octave, octaveShift, transpose);
  }

  /** Returns the octaves from the typed note to the note in the score. */
  public int octaves() {
    return octaveChange + octaveShift;
  }
}
