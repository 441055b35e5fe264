package fingering.playability.part;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import fingering.tables.Table;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Finds words that say who plays or what to change, from {@code score-words.table}. Texts are
 * cached. Thread-safe.
 */
public final class ScoreWords {
  private static final String NAME = "score-words.table";
  private static final int FIELDS = 4;
  private static final int MOST_CACHED = 2000;
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHER = Pattern.compile("[^a-z0-9]+");
  private static final Splitter BLANKS = Splitter.on(' ').omitEmptyStrings();

  /** The meanings of words. */
  public enum Kind {
    DIVIDED,
    TOGETHER,
    DOUBLE_STOP,
    SOLO,
    TUTTI,
    MUTE_ON,
    MUTE_OFF,
    INSTRUMENT,
    TUNING,
    SECTION,
    ONE,
    SHARED
  }

  private record Entry(List<String> words, Kind kind) {}

  /** The entries by first word, the longest first. */
  private final ImmutableListMultimap<String, Entry> entries;

  private final Map<String, ImmutableSet<Kind>> cache = new ConcurrentHashMap<>();

  /** Reads the table. */
  public ScoreWords() {
    ImmutableListMultimap.Builder<String, Entry> all = ImmutableListMultimap.builder();
    all.orderValuesBy(Comparator.comparingInt(entry -> -entry.words.size()));
    for (Table.Row row : Table.load(ScoreWords.class, NAME, FIELDS).rows()) {
      row.text(FIELDS - 1);
      List<String> words = words(row.text(2));
      all.put(words.get(0), new Entry(words, kind(row)));
    }
    entries = all.build();
  }

  private static Kind kind(Table.Row row) {
    for (Kind kind : Kind.values()) {
      if (kind.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(row.text(0))) {
        return kind;
      }
    }
    throw row.error("there is no kind '" + row.text(0) + "'");
  }

  /** Returns all meanings of a text. */
  public ImmutableSet<Kind> read(String text) {
    ImmutableSet<Kind> known = cache.get(text);
    if (known == null) {
      if (cache.size() >= MOST_CACHED) {
        cache.clear();
      }
      known = ImmutableSet.copyOf(find(words(text)));
      cache.put(text, known);
    }
    return known;
  }

  private Set<Kind> find(List<String> words) {
    Set<Kind> found = EnumSet.noneOf(Kind.class);
    int at = 0;
    while (at < words.size()) {
      int longest = 0;
      for (Entry entry : entries.get(words.get(at))) {
        if (entry.words.size() >= longest && begins(words, at, entry.words)) {
          longest = entry.words.size();
          found.add(entry.kind);
        }
      }
      at += Math.max(1, longest);
    }
    return found;
  }

  private static boolean begins(List<String> words, int at, List<String> with) {
    return at + with.size() <= words.size() && words.subList(at, at + with.size()).equals(with);
  }

  private static List<String> words(String text) {
    String plain =
        MARKS
            .matcher(
                Normalizer.normalize(
                    text.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFD))
            .replaceAll("");
    return BLANKS.splitToList(OTHER.matcher(plain).replaceAll(" "));
  }
}
