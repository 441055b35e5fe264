package fingering.abc.syntax;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.tables.Letter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A key signature (ABC 2.1, field K).
 *
 * @param mode the MusicXML name of the mode
 * @param alters semitones by which the signature alters letters; others are natural
 */
public record AbcKey(String mode, ImmutableMap<Letter, Integer> alters) {
  private static final int MOST_SIGNS = 7;
  private static final ImmutableMap<String, Integer> ALTERATIONS =
      ImmutableMap.of("^^", 2, "^", 1, "=", 0, "_", -1, "__", -2);

  /** The letters in the order of sharps. */
  private static final ImmutableList<Letter> SHARPS =
      ImmutableList.of(Letter.F, Letter.C, Letter.G, Letter.D, Letter.A, Letter.E, Letter.B);

  /**
   * Fifths from the major key of a tonic to its key in a mode, by the first three letters of the
   * mode.
   */
  private static final ImmutableMap<String, Integer> FIFTHS =
      ImmutableMap.<String, Integer>builder()
          .put("lyd", 1)
          .put("maj", 0)
          .put("ion", 0)
          .put("mix", -1)
          .put("dor", -2)
          .put("min", -3)
          .put("aeo", -3)
          .put("phr", -4)
          .put("loc", -5)
          .buildOrThrow();

  private static final ImmutableMap<String, String> NAMES =
      ImmutableMap.<String, String>builder()
          .put("lyd", "lydian")
          .put("maj", "major")
          .put("ion", "ionian")
          .put("mix", "mixolydian")
          .put("dor", "dorian")
          .put("min", "minor")
          .put("aeo", "aeolian")
          .put("phr", "phrygian")
          .put("loc", "locrian")
          .buildOrThrow();

  private static final Pattern TONIC = Pattern.compile("([A-G])([#b]?)([A-Za-z]*)");
  private static final Pattern SMALL_TONIC = Pattern.compile("[a-g][#b]?([A-Za-z]*)");
  private static final Pattern ACCIDENTAL = Pattern.compile("(\\^\\^|\\^|__|_|=)([a-gA-G])");

  /**
   * The keys of the Highland pipes: HP prints no signature, Hp two sharps (ABC 2.1, section 'K: -
   * key').
   */
  private static final ImmutableMap<String, AbcKey> PIPES =
      ImmutableMap.of("HP", ofFifths(0, "none"), "Hp", ofFifths(2, "none"));

  /** No sharps and no flats. */
  public static final AbcKey C_MAJOR = ofFifths(0, "major");

  /**
   * Reads the words of a field K. Words for the clef are ignored.
   *
   * @param before the key that stays if the field has none that can be read
   */
  public static AbcKey read(List<FieldWord> words, AbcKey before, Repairs repairs) {
    AbcKey key = new AbcKey("none", ImmutableMap.of());
    int i = 0;
    if (!words.isEmpty() && words.get(0).bare()) {
      FieldWord first = words.get(0);
      Matcher tonic = TONIC.matcher(first.value());
      if (PIPES.containsKey(first.value())) {
        key = PIPES.getOrDefault(first.value(), key);
        i = 1;
      } else if (tonic.matches()) {
        boolean separate =
            tonic.group(3).isEmpty()
                && words.size() > 1
                && words.get(1).bare()
                && isMode(words.get(1).value());
        String mode = separate ? words.get(1).value() : tonic.group(3);
        key = of(tonic.group(1), tonic.group(2), mode, first, repairs);
        i = separate ? 2 : 1;
      } else if (first.value().equals("none")) {
        i = 1;
      } else if (isSmallTonic(first)) {
        String capital = Ascii.toUpperCase(first.value().substring(0, 1));
        String value = capital + first.value().substring(1);
        repairs.add(first.start(), "the key '%s' was read as %s".formatted(first.value(), value));
        List<FieldWord> all = new ArrayList<>(words);
        all.set(0, new FieldWord("", value, first.start()));
        return read(all, before, repairs);
      } else if (!AbcClef.isClefWord(first) && !isChange(first)) {
        repairs.add(
            first.start(),
            "'%s' is not a key, as in K:D, K:Bb, K:F#m or K:Ador; it was left out"
                .formatted(first.value()));
        key = before;
        i = 1;
      }
    }
    for (FieldWord word : words.subList(i, words.size())) {
      key = key.with(word, repairs);
    }
    return key;
  }

  private static AbcKey of(
      String letter, String sign, String mode, FieldWord word, Repairs repairs) {
    if (!isMode(mode)) {
      repairs.add(
          word.start(), "the mode of '%s' is unknown; major was assumed".formatted(word.value()));
      return of(letter, sign, "", word, repairs);
    }
    String firstThree = firstThree(mode);
    int tonic = SHARPS.indexOf(Letter.valueOf(letter)) - 1;
    int alter = sign.isEmpty() ? 0 : sign.equals("#") ? 1 : -1;
    int fifths = tonic + MOST_SIGNS * alter + FIFTHS.getOrDefault(firstThree, 0);
    return ofFifths(fifths, NAMES.getOrDefault(firstThree, "none"));
  }

  private static boolean isSmallTonic(FieldWord word) {
    Matcher small = SMALL_TONIC.matcher(word.value());
    return small.matches() && isMode(small.group(1)) && !AbcClef.isClefWord(word);
  }

  private static boolean isChange(FieldWord word) {
    return word.value().equals("exp") || ACCIDENTAL.matcher(word.value()).matches();
  }

  private static boolean isMode(String text) {
    return text.isEmpty() || FIFTHS.containsKey(firstThree(text));
  }

  // Only three letters of a mode count. No letters mean major, and m alone means minor.
  private static String firstThree(String mode) {
    String small = mode.toLowerCase(Locale.ROOT);
    if (small.isEmpty()) {
      return "maj";
    }
    return small.equals("m") ? "min" : small.substring(0, Math.min(3, small.length()));
  }

  private static AbcKey ofFifths(int fifths, String mode) {
    Map<Letter, Integer> alters = new EnumMap<>(Letter.class);
    for (Letter letter : Letter.values()) {
      int alter = altered(letter, fifths);
      if (alter != 0) {
        alters.put(letter, alter);
      }
    }
    return new AbcKey(mode, ImmutableMap.copyOf(alters));
  }

  private static int altered(Letter letter, int fifths) {
    return Math.floorDiv(fifths - SHARPS.indexOf(letter) + MOST_SIGNS - 1, MOST_SIGNS);
  }

  /** This key, changed by a word: an accidental, or exp, after which only accidentals count. */
  private AbcKey with(FieldWord word, Repairs repairs) {
    if (word.bare() && word.value().equals("exp")) {
      return new AbcKey("none", ImmutableMap.of());
    }
    Matcher sign = ACCIDENTAL.matcher(word.value());
    if (word.bare() && sign.matches()) {
      Map<Letter, Integer> changed = new EnumMap<>(Letter.class);
      changed.putAll(alters);
      Letter letter = Letter.valueOf(sign.group(2).toUpperCase(Locale.ROOT));
      changed.put(letter, alteration(sign.group(1)));
      changed.values().removeIf(alter -> alter == 0);
      return new AbcKey(mode, ImmutableMap.copyOf(changed));
    }
    if (word.bare() && !AbcClef.isClefWord(word)) {
      repairs.add(
          word.start(),
          "'%s' is neither a mode, an accidental nor a clef; it was left out"
              .formatted(word.value()));
    }
    return this;
  }

  /**
   * Returns the semitones by which accidentals such as {@code ^} or {@code __} alter a note; 0 if
   * they are not valid.
   */
  public static int alteration(String accidentals) {
    return ALTERATIONS.getOrDefault(accidentals, 0);
  }

  /** Returns the semitones by which the signature alters a letter. */
  public int alter(Letter letter) {
    return alters.getOrDefault(letter, 0);
  }

  /** Returns the sharps, negative for flats; empty for a signature that no major key has. */
  public Optional<Integer> fifths() {
    return IntStream.rangeClosed(-MOST_SIGNS, MOST_SIGNS)
        .boxed()
        .filter(fifths -> ofFifths(fifths, mode).alters.equals(alters))
        .findFirst();
  }
}
