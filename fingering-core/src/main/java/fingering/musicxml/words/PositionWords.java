package fingering.musicxml.words;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.tables.Position;
import fingering.tables.RomanNumeral;
import fingering.tables.Table;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Recognises words that name a position of the hand, {@code 3rd pos.}, {@code III. Lage}.
 * Immutable.
 */
public final class PositionWords {
  private static final int FIELDS = 5;
  private static final int WORDS = 2;
  private static final int MEANING = 3;

  /** The highest position that words name (common practice, no source). */
  private static final int MOST = 13;

  private static final String HALF = " half ";
  private static final Pattern FRACTION = Pattern.compile("½|(?<!\\d)1/2(?!\\d)");
  private static final String OR = " or ";

  /** A dash or slash between two numbers. */
  private static final Pattern RANGE =
      Pattern.compile("(?<=[\\divIVX.ª°stndrh])\\s?[-–—/]\\s?(?=[\\dIVX])");

  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** The kinds of instructions. */
  public enum Kind {
    /** A position. */
    POSITION,
    /** The thumb comes onto the string, at an unnamed place. */
    THUMB,
    /** A Roman numeral alone, which names strings in some editions and positions in others. */
    NUMERAL,
    /** Two positions to choose from, such as 2nd or 3rd. */
    CHOICE,
    /** The hand stays where it is. */
    STAY
  }

  /**
   * An instruction that was read.
   *
   * @param kind its kind
   * @param position the position; for a numeral, its possible meaning; empty for the thumb, a
   *     choice and a stay
   */
  public record Instruction(Kind kind, Optional<Position> position) {}

  /** A number among the words, and the index of the next word. */
  private record Counted(Position position, int next) {}

  private static final class Holder {
    static final PositionWords STANDARD =
        new PositionWords(Table.load(PositionWords.class, "position-words.table", FIELDS));
  }

  private final ImmutableSet<String> nouns;
  private final ImmutableSet<String> halves;
  private final ImmutableSet<String> thumbs;
  private final ImmutableSet<String> stays;
  private final ImmutableSet<String> endings;
  private final ImmutableSet<String> joining;
  private final ImmutableMap<String, Integer> ordinals;
  private final ImmutableMap<String, Integer> romans;
  private final Pattern figure;

  private PositionWords(Table table) {
    for (Table.Row row : table.rows()) {
      row.text(FIELDS - 1);
      if (!List.of("noun", "half", "thumb", "ending", "and", "ordinal", "stay")
          .contains(row.text(0))) {
        throw row.error("there is no kind '" + row.text(0) + "'");
      }
    }
    nouns = words(table, "noun");
    halves = words(table, "half");
    thumbs = words(table, "thumb");
    stays = words(table, "stay");
    endings = words(table, "ending");
    joining = words(table, "and");
    ordinals =
        table.rows().stream()
            .filter(row -> row.text(0).equals("ordinal"))
            .collect(
                ImmutableMap.toImmutableMap(
                    row -> fold(row.text(WORDS)), row -> Integer.parseInt(row.text(MEANING))));
    romans =
        IntStream.rangeClosed(1, MOST)
            .boxed()
            .collect(ImmutableMap.toImmutableMap(n -> fold(RomanNumeral.of(n)), n -> n));
    figure =
        Pattern.compile(
            "(\\d{1,2}|[ivx]+)("
                + endings.stream().map(Pattern::quote).collect(Collectors.joining("|"))
                + ")?");
  }

  /** Returns the standard words. */
  public static PositionWords standard() {
    return Holder.STANDARD;
  }

  private static ImmutableSet<String> words(Table table, String kind) {
    return table.rows().stream()
        .filter(row -> row.text(0).equals(kind))
        .map(row -> fold(row.text(WORDS)))
        .collect(ImmutableSet.toImmutableSet());
  }

  private static String fold(String word) {
    return word.toLowerCase(Locale.ROOT);
  }

  /** Returns the instruction in a text; empty if it has none. */
  public Optional<Instruction> read(String text) {
    String flat =
        Normalizer.normalize(
            RANGE.matcher(FRACTION.matcher(text).replaceAll(HALF)).replaceAll(OR),
            Normalizer.Form.NFKC);
    ImmutableList<String> all =
        OTHER
            .splitAsStream(flat)
            .filter(word -> !word.isEmpty())
            .collect(ImmutableList.toImmutableList());
    ImmutableList<String> words =
        all.stream().map(PositionWords::fold).collect(ImmutableList.toImmutableList());
    for (int i = 0; i < words.size(); i++) {
      Optional<Instruction> instruction = at(words, i);
      if (instruction.isPresent()) {
        return instruction;
      }
    }
    if (words.stream().anyMatch(stays::contains)) {
      return Optional.of(new Instruction(Kind.STAY, Optional.empty()));
    }
    // Only capitals: v is a bow stroke, and x may be anything.
    return all.size() == 1 && !all.get(0).equals(words.get(0))
        ? Optional.ofNullable(romans.get(words.get(0)))
            .map(number -> new Instruction(Kind.NUMERAL, Optional.of(Position.of(number))))
        : Optional.empty();
  }

  private Optional<Instruction> at(List<String> words, int i) {
    if (thumbs.contains(words.get(i))) {
      return Optional.of(new Instruction(Kind.THUMB, Optional.empty()));
    }
    if (nouns.contains(words.get(i))) {
      return number(words, i + 1)
          .map(number -> position(number.position(), otherAfter(words, number.next())));
    }
    return number(words, i)
        .filter(number -> number.next() < words.size())
        .filter(number -> nouns.contains(words.get(number.next())))
        .map(
            number ->
                position(
                    number.position(),
                    otherBefore(words, i) || otherAfter(words, number.next() + 1)));
  }

  private static Instruction position(Position position, boolean choice) {
    return choice
        ? new Instruction(Kind.CHOICE, Optional.empty())
        : new Instruction(Kind.POSITION, Optional.of(position));
  }

  /** The number at an index; {@code 2½} is one number. */
  private Optional<Counted> number(List<String> words, int i) {
    if (i >= words.size()) {
      return Optional.empty();
    }
    if (halves.contains(words.get(i))) {
      return Optional.of(new Counted(Position.HALF, i + 1));
    }
    Optional<Integer> count =
        Optional.ofNullable(ordinals.get(words.get(i))).or(() -> figure(words.get(i)));
    if (count.isEmpty()) {
      return Optional.empty();
    }
    int next = i + 1;
    if (next < words.size() && endings.contains(words.get(next))) {
      next++;
    }
    boolean andHalf = next < words.size() && halves.contains(words.get(next));
    return Optional.of(
        andHalf
            ? new Counted(Position.ofHalves(2 * count.get() + 1), next + 1)
            : new Counted(Position.of(count.get()), next));
  }

  private Optional<Integer> figure(String word) {
    Matcher matcher = figure.matcher(word);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String name = matcher.group(1);
    if (!Character.isDigit(name.charAt(0))) {
      return Optional.ofNullable(romans.get(name));
    }
    int number = Integer.parseInt(name);
    return number < 1 || number > MOST ? Optional.empty() : Optional.of(number);
  }

  /** Whether another number comes before: {@code 2nd or 3rd pos.}. */
  private boolean otherBefore(List<String> words, int i) {
    int last = i > 0 && joining.contains(words.get(i - 1)) ? i - 2 : i - 1;
    return last >= 0 && number(words, last).isPresent();
  }

  /** Whether another number follows: {@code 2nd pos. or 3rd}. */
  private boolean otherAfter(List<String> words, int i) {
    return i < words.size() && joining.contains(words.get(i)) && number(words, i + 1).isPresent();
  }
}
