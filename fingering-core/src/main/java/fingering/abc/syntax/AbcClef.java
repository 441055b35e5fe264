package fingering.abc.syntax;

import com.google.common.collect.ImmutableMap;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A clef, and how it moves the notes (ABC 2.1, clefs and transposition).
 *
 * @param sign G, C or F
 * @param line the line of the staff that it stands on, from 1 at the bottom
 * @param eight octaves that an 8 above (1) or below (-1) moves the sound by
 * @param shift octaves by which notes lie higher than they are typed
 * @param transpose semitones by which the part sounds higher than written
 */
public record AbcClef(String sign, int line, int eight, int shift, int transpose) {
  /** The clef of a tune that names none. */
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

  /** Whether a word has to do with the clef. */
  public static boolean speaks(FieldWord word) {
    return switch (word.key()) {
      case "clef", "octave", "transpose", "middle", "m" -> true;
      case "" -> {
        Matcher name = NAME.matcher(word.value());
        yield name.matches() && (NAMED.containsKey(name.group(1)) || name.group(1).equals("perc"));
      }
      default -> false;
    };
  }

  /** The clef with what a word says of it. */
  public AbcClef with(FieldWord word) {
    return switch (word.key()) {
      case "octave" -> {
        if (!OCTAVES.matcher(word.value()).matches()) {
          throw word.wrong("'%s' is no number of octaves: write octave=-1.".formatted(word));
        }
        yield new AbcClef(sign, line, eight, Integer.parseInt(word.value()), transpose);
      }
      case "transpose" -> {
        if (!SEMITONES.matcher(word.value()).matches()) {
          throw word.wrong("'%s' is no number of semitones: write transpose=-12.".formatted(word));
        }
        yield new AbcClef(sign, line, eight, shift, Integer.parseInt(word.value()));
      }
      case "middle", "m" ->
          throw word.wrong(
              "the clef is read by its name only: write octave=-1 or another number instead of"
                  + " '%s'.".formatted(word));
      default -> named(word);
    };
  }

  private AbcClef named(FieldWord word) {
    Matcher name = NAME.matcher(word.value());
    Optional<AbcClef> named =
        name.matches() ? Optional.ofNullable(NAMED.get(name.group(1))) : Optional.empty();
    AbcClef clef =
        named.orElseThrow(
            () ->
                word.wrong(
                    "'%s' is no clef of a string part: write treble, alto, tenor or bass, with a line (bass3) or an octave (bass-8) where needed."
                        .formatted(word.value())));
    int onLine = name.group(2).isEmpty() ? clef.line : Integer.parseInt(name.group(2));
    int octave = name.group(3) == null ? 0 : name.group(3).startsWith("-") ? -1 : 1;
    return new AbcClef(clef.sign, onLine, octave, shift, transpose);
  }

  /** Octaves from a note as typed to the note of the score. */
  public int octaves() {
    return eight + shift;
  }
}
