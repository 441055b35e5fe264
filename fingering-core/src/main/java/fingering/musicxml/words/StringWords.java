package fingering.musicxml.words;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.tables.RomanNumeral;
import fingering.tables.Table;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Recognises words that name a string to play on, {@code sul G}, and words that end them.
 * Immutable.
 */
public final class StringWords {
  private static final int FIELDS = 5;
  private static final String NONE = "-";
  private static final int MOST = 5;
  private static final Pattern AND = Pattern.compile("[/&+]");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** The kinds of instructions. */
  public enum Kind {
    /** One string. */
    STRING,
    /** Several strings to choose from, or all strings again. */
    ENDS,
    /** Back to normal: the place of the bow if another was prescribed, otherwise all strings. */
    USUAL,
    /** A special place or use of the bow. */
    PLACE,
    /** The normal use of the bow. */
    BOW,
    /** The note for the thumb, which does not name a string. */
    THUMB
  }

  /**
   * An instruction that was read.
   *
   * @param kind its kind
   * @param string the string, by its letter or number; empty if it names none
   */
  public record Instruction(Kind kind, String string) {}

  /** A match of words of the table in a text. */
  private record Match(Kind kind, String name, int start, int end) {}

  private record Form(Kind kind, Pattern pattern, String meaning) {
    Optional<Match> find(String text, int from) {
      Matcher matcher = pattern.matcher(text);
      if (!matcher.find(from)) {
        return Optional.empty();
      }
      String name = matcher.groupCount() > 0 ? matcher.group(1) : meaning;
      return Optional.of(new Match(kind, name, matcher.start(), matcher.end()));
    }
  }

  private static final class Holder {
    static final StringWords STANDARD =
        new StringWords(Table.load(StringWords.class, "strings.table", FIELDS));
  }

  private final ImmutableMap<String, String> names;
  private final Pattern otherString;
  private final Pattern ordinal;
  private final ImmutableList<Form> forms;

  private StringWords(Table table) {
    ImmutableMap.Builder<String, String> all = ImmutableMap.builder();
    for (Table.Row row : table.rows()) {
      row.text(FIELDS - 1);
      if (row.text(0).equals("note") || row.text(0).equals("ordinal")) {
        all.put(row.text(2).toLowerCase(Locale.ROOT), row.text(3));
      }
    }
    names = all.buildOrThrow();
    String note = any(words(table, "note"));
    String figure = any(Stream.concat(romans(), figures()));
    String ending = any(words(table, "ending"));
    // A raised ending may be separated from its figure, but the e of 'III e IV' is not an ending.
    String alone = " (?:%s)(?! (?:(?-i:[A-G])|%s)(?: |$))".formatted(ending, figure);
    String ended =
        "(?:%s)(?:(?:%s)|%s)|%s|%s"
            .formatted(figure, ending, alone, any(romans()), any(words(table, "ordinal")));
    String number = ended + "|" + any(figures());
    otherString =
        compile("(?:%s) (?:(?-i:[A-G])|%s|%s)".formatted(any(words(table, "and")), number, note));
    ordinal = compile("(" + ended + ")");
    forms =
        table.rows().stream()
            .flatMap(row -> form(row, note, ended, number).stream())
            .collect(ImmutableList.toImmutableList());
  }

  /** Returns the standard words. */
  public static StringWords standard() {
    return Holder.STANDARD;
  }

  private static Stream<String> words(Table table, String kind) {
    return table.rows().stream().filter(row -> row.text(0).equals(kind)).map(row -> row.text(2));
  }

  private static Stream<String> romans() {
    return Stream.iterate(MOST, n -> n > 0, n -> n - 1).map(RomanNumeral::of);
  }

  private static Stream<String> figures() {
    return Stream.iterate(MOST, n -> n > 0, n -> n - 1).map(n -> Integer.toString(n));
  }

  /** A pattern for any of the words, the longest first. */
  private static String any(Stream<String> words) {
    return words
        .sorted((a, b) -> b.length() - a.length())
        .map(Pattern::quote)
        .collect(Collectors.joining("|"));
  }

  private static Pattern compile(String pattern) {
    return Pattern.compile(
        "(?<= |^)(?:" + pattern + ")(?= |$)", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  private static Optional<Form> form(Table.Row row, String note, String ended, String number) {
    Optional<Kind> kind =
        Arrays.stream(Kind.values())
            .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(row.text(0)))
            .findFirst();
    if (kind.isEmpty()) {
      if (!List.of("note", "ordinal", "ending", "and").contains(row.text(0))) {
        throw row.error("there is no kind '" + row.text(0) + "'");
      }
      return Optional.empty();
    }
    String pattern =
        Arrays.stream(row.text(2).split(" ", -1))
            .map(
                word ->
                    switch (word) {
                      case "LETTER" -> "((?-i:[A-G]))";
                      case "letter" -> "([A-G])";
                      case "NOTE" -> "(" + note + ")";
                      case "ORDINAL" -> "(" + ended + ")";
                      case "NUMBER" -> "(" + number + ")";
                      default -> Pattern.quote(word);
                    })
            .collect(Collectors.joining(" "));
    String meaning = row.text(3).equals(NONE) ? "" : row.text(3);
    return Optional.of(new Form(kind.get(), compile(pattern), meaning));
  }

  /**
   * Returns the instructions in a text, in order. Of several matches that begin at the same word,
   * the longest counts.
   *
   * @param line whether a line begins at the words, so that a bare {@code IV} is a string
   */
  public ImmutableList<Instruction> read(String words, boolean line) {
    String text = plain(words);
    Matcher bare = ordinal.matcher(text);
    if (line && bare.matches()) {
      return ImmutableList.of(new Instruction(Kind.STRING, string(bare.group(1))));
    }
    ImmutableList.Builder<Instruction> all = ImmutableList.builder();
    int from = 0;
    while (from < text.length()) {
      Optional<Match> first = first(text, from);
      if (first.isEmpty()) {
        break;
      }
      from = first.get().end();
      all.add(instruction(first.get(), text.substring(from).strip()));
    }
    return all.build();
  }

  private Optional<Match> first(String text, int from) {
    return forms.stream()
        .flatMap(form -> form.find(text, from).stream())
        .min(
            Comparator.comparingInt(Match::start)
                .thenComparing(Match::end, Comparator.reverseOrder()));
  }

  private Instruction instruction(Match match, String rest) {
    return match.kind() == Kind.STRING && !otherString.matcher(rest).lookingAt()
        ? new Instruction(Kind.STRING, string(match.name()))
        : new Instruction(match.kind() == Kind.STRING ? Kind.ENDS : match.kind(), "");
  }

  /** The letter, or the number in figures, of a string. */
  private String string(String named) {
    String name = named.toLowerCase(Locale.ROOT);
    if (names.containsKey(name)) {
      return names.get(name);
    }
    if (name.length() == 1 && name.charAt(0) >= 'a' && name.charAt(0) <= 'g') {
      return named.toUpperCase(Locale.ROOT);
    }
    for (int number = MOST; number > 0; number--) {
      String roman = RomanNumeral.of(number).toLowerCase(Locale.ROOT);
      if (name.startsWith(Integer.toString(number)) || name.startsWith(roman)) {
        return Integer.toString(number);
      }
    }
    throw new IllegalStateException("'" + named + "' names no string");
  }

  /** Letters and figures separated by single blanks; raised letters become normal ones. */
  private static String plain(String words) {
    String flat = AND.matcher(Normalizer.normalize(words, Normalizer.Form.NFKC)).replaceAll(" e ");
    return OTHER.matcher(flat).replaceAll(" ").strip();
  }
}
