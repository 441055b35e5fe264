package fingering.musicxml.words;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.tables.Table;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The phrases of a table, found in texts without regard to case, accents and punctuation. Programs
 * export {@code più} and {@code piu}, {@code Mäßig} and {@code Maessig}. Immutable.
 */
final class Phrases {
  private static final int FIELDS = 5;
  private static final int WORDS = 2;
  private static final int VALUE = 3;
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");

  /**
   * A phrase in a text.
   *
   * @param kind its kind
   * @param value its number; 0 if it has none
   * @param from index of its first word in the text
   * @param next index of the word after it
   */
  record Phrase(String kind, int value, int from, int next) {}

  private record Entry(String kind, int value) {}

  private final ImmutableMap<ImmutableList<String>, Entry> entries;
  private final int longest;

  private Phrases(ImmutableMap<ImmutableList<String>, Entry> entries) {
    this.entries = entries;
    longest = entries.keySet().stream().mapToInt(List::size).max().orElse(0);
  }

  /**
   * Reads a table with the fields kind, language, words, number or {@code -}, source.
   *
   * @param kinds the kinds that it may have
   * @throws fingering.tables.BadTableException if a row is malformed
   */
  static Phrases load(String name, ImmutableSet<String> kinds) {
    ImmutableMap.Builder<ImmutableList<String>, Entry> entries = ImmutableMap.builder();
    for (Table.Row row : Table.load(Phrases.class, name, FIELDS).rows()) {
      row.text(FIELDS - 1);
      if (!kinds.contains(row.text(0))) {
        throw row.error("there is no kind '" + row.text(0) + "'");
      }
      int value = row.text(VALUE).equals("-") ? 0 : row.integer(VALUE);
      entries.put(words(row.text(WORDS)), new Entry(row.text(0), value));
    }
    return new Phrases(entries.buildOrThrow());
  }

  /** Returns the words of a text, in lower case and without accents. */
  static ImmutableList<String> words(String text) {
    String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
    return OTHER
        .splitAsStream(bare.toLowerCase(Locale.ROOT).replace("ß", "ss"))
        .filter(word -> !word.isEmpty())
        .collect(ImmutableList.toImmutableList());
  }

  /** Returns the phrases in a text, in order; of those that begin at the same word the longest. */
  ImmutableList<Phrase> in(List<String> words) {
    ImmutableList.Builder<Phrase> found = ImmutableList.builder();
    int at = 0;
    while (at < words.size()) {
      Optional<Phrase> phrase = at(words, at);
      phrase.ifPresent(found::add);
      at = phrase.map(Phrase::next).orElse(at + 1);
    }
    return found.build();
  }

  private Optional<Phrase> at(List<String> words, int from) {
    return IntStream.rangeClosed(1, Math.min(longest, words.size() - from))
        .mapToObj(length -> phrase(words, from, from + length))
        .flatMap(Optional::stream)
        .max(Comparator.comparingInt(Phrase::next));
  }

  private Optional<Phrase> phrase(List<String> words, int from, int next) {
    return Optional.ofNullable(entries.get(ImmutableList.copyOf(words.subList(from, next))))
        .map(entry -> new Phrase(entry.kind(), entry.value(), from, next));
  }
}
