package fingering.abc;

import com.google.common.collect.ImmutableList;
import fingering.abc.reading.TuneSize;
import fingering.abc.reading.TuneSource;
import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.SourceLine;
import fingering.tables.Choice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A text in ABC notation: one tune, or several tunes that each begin with a field X: (ABC 2.1, file
 * structure). A text without this field is one tune. Immutable and thread-safe.
 */
public final class Tunebook {
  private static final int TITLES_NAMED = 20;
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** Stands for a character that no text contains. */
  private static final char REPLACEMENT = '\uFFFD';

  /** From here on, Unicode has no characters of 16 bits. */
  private static final char NO_CHARACTER = '\uFFFE';

  /** The default limits of score files. */
  private static final long MOST_MEASURES = 500_000;

  private static final long MOST_NOTES = 1_000_000;

  private final String source;
  private final ImmutableList<TuneSource> tunes;

  private Tunebook(String source, ImmutableList<TuneSource> tunes) {
    this.source = source;
    this.tunes = tunes;
  }

  /**
   * Divides a text into tunes. A tune is read only when it is chosen.
   *
   * @param source the name of the text in messages, usually a file name
   * @param text the text in ABC notation
   * @throws AbcException if the text contains no tune
   */
  public static Tunebook parse(String source, String text) {
    List<SourceLine> lines = new ArrayList<>();
    String content = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    content
        .lines()
        .forEach(line -> lines.add(new SourceLine(source, lines.size() + 1, printable(line))));
    ImmutableList<TuneSource> tunes =
        lines.stream().anyMatch(Tunebook::beginsTune)
            ? numbered(lines)
            : ImmutableList.of(onlyTune(source, lines));
    return new Tunebook(source, tunes);
  }

  /** Replaces characters that no text contains, so that the line can be shown and written. */
  private static String printable(String line) {
    StringBuilder text = new StringBuilder(line);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < text.length()
              && Character.isLowSurrogate(text.charAt(i + 1));
      if (pair) {
        i++;
      } else if ((Character.isISOControl(c) && c != '\t')
          || Character.isSurrogate(c)
          || c >= NO_CHARACTER) {
        text.setCharAt(i, REPLACEMENT);
      }
    }
    return text.toString();
  }

  private static boolean beginsTune(SourceLine line) {
    return line.field() && line.letter() == 'X';
  }

  private static boolean hasContent(SourceLine line) {
    return !line.blank() && !line.comment();
  }

  private static TuneSource onlyTune(String source, List<SourceLine> lines) {
    int from = 0;
    while (from < lines.size() && lines.get(from).blank()) {
      from++;
    }
    int to = end(lines, from, lines.size());
    if (lines.subList(from, to).stream().noneMatch(Tunebook::hasContent)) {
      throw new AbcException(
          "%s contains no tune: type some notes, such as D2 FA d4 below K:D.".formatted(source));
    }
    return TuneSource.of(
        ImmutableList.of(),
        ImmutableList.copyOf(lines.subList(from, to)),
        leftOut(lines.subList(to, lines.size())));
  }

  private static ImmutableList<TuneSource> numbered(List<SourceLine> lines) {
    int at = 0;
    while (!beginsTune(lines.get(at))) {
      at++;
    }
    List<SourceLine> before = lines.subList(0, at);
    boolean above = at > 0 && before.stream().noneMatch(SourceLine::blank) && hasTitleOrKey(before);
    ImmutableList<SourceLine> shared = above ? ImmutableList.of() : shared(before);
    int from = above ? 0 : at;
    ImmutableList.Builder<TuneSource> tunes = ImmutableList.builder();
    while (at < lines.size()) {
      int next = at + 1;
      while (next < lines.size() && !beginsTune(lines.get(next))) {
        next++;
      }
      int end = end(lines, at, next);
      ImmutableList.Builder<String> remarks = ImmutableList.builder();
      if (!above && hasTitleOrKey(before)) {
        remarks.add("the titles and keys above the first X: are left out");
      }
      remarks.addAll(leftOut(lines.subList(end, next)));
      tunes.add(
          TuneSource.of(shared, ImmutableList.copyOf(lines.subList(from, end)), remarks.build()));
      at = next;
      from = next;
    }
    return tunes.build();
  }

  /** An empty line ends a tune. One inside its header, before the key or the notes, does not. */
  private static int end(List<SourceLine> lines, int from, int to) {
    boolean hasKey = false;
    for (int at = from; at < to; at++) {
      SourceLine line = lines.get(at);
      boolean music = hasContent(line) && !line.field();
      if (music) {
        return nextBlank(lines, at, to);
      }
      hasKey |= line.field() && line.letter() == 'K';
      if (line.blank() && !hasKey && !hasTitleOrKey(lines.subList(at, to))) {
        return at;
      }
    }
    return to;
  }

  private static int nextBlank(List<SourceLine> lines, int from, int to) {
    int at = from;
    while (at < to && !lines.get(at).blank()) {
      at++;
    }
    return at;
  }

  private static boolean hasTitleOrKey(List<SourceLine> lines) {
    return lines.stream()
        .anyMatch(line -> line.field() && (line.letter() == 'K' || line.letter() == 'T'));
  }

  private static ImmutableList<String> leftOut(List<SourceLine> after) {
    return after.stream()
        .filter(Tunebook::hasContent)
        .limit(1)
        .map(
            line ->
                "the tune ends at an empty line; the text from line %d on is left out"
                    .formatted(line.number()))
        .collect(ImmutableList.toImmutableList());
  }

  /** The fields of the file header, which apply to all tunes. */
  private static ImmutableList<SourceLine> shared(List<SourceLine> before) {
    ImmutableList.Builder<SourceLine> shared = ImmutableList.builder();
    for (SourceLine line : before) {
      if (line.blank()) {
        break;
      }
      boolean ofTune = line.field() && (line.letter() == 'K' || line.letter() == 'T');
      if (line.comment() || (line.field() && !ofTune)) {
        shared.add(line);
      }
    }
    return shared.build();
  }

  /** Returns the tunes, each by number and title, for a list of choices. */
  public ImmutableList<String> tunes() {
    return tunes.stream().map(TuneSource::toString).collect(ImmutableList.toImmutableList());
  }

  /**
   * Reads one of the tunes, of at most 500,000 measures and 1,000,000 notes.
   *
   * @param number the number in its X: field; empty for the only tune
   * @throws AbcException if there is no such tune, if several match, or if it has no note
   */
  public TuneScore choose(Optional<String> number) {
    return choose(number, MOST_MEASURES, MOST_NOTES);
  }

  /**
   * Reads one of the tunes. What cannot be read in it is left out, with a remark.
   *
   * @param number the number in its X: field; empty for the only tune
   * @param measures the highest number of measures in all voices
   * @param notes the highest number of notes and rests in all voices
   * @throws AbcException if there is no such tune, if several match, if it has no note, or if it is
   *     too large
   */
  public TuneScore choose(Optional<String> number, long measures, long notes) {
    return TuneScore.of(
        number.map(this::numbered).orElseGet(this::only), new TuneSize(measures, notes));
  }

  private TuneSource only() {
    if (tunes.size() > 1) {
      throw new AbcException(
          "%s contains %d tunes; choose one: %s".formatted(source, tunes.size(), list()),
          Choice.TUNE);
    }
    return tunes.get(0);
  }

  private TuneSource numbered(String number) {
    ImmutableList<TuneSource> found =
        tunes.stream()
            .filter(tune -> tune.number().equals(number.strip()))
            .collect(ImmutableList.toImmutableList());
    if (found.size() > 1) {
      throw new AbcException(
          "%s contains %d tunes with the number %s: give each tune another number in its field X:."
              .formatted(source, found.size(), number.strip()));
    }
    if (found.isEmpty()) {
      String choices = list();
      throw new AbcException(
          choices.isBlank()
              ? "%s contains a single tune without a number: leave the number out."
                  .formatted(source)
              : "%s contains no tune %s; choose one: %s".formatted(source, number.strip(), choices),
          Choice.TUNE);
    }
    return found.get(0);
  }

  private String list() {
    String named =
        tunes.stream()
            .limit(TITLES_NAMED)
            .map(TuneSource::toString)
            .collect(Collectors.joining(", "));
    int more = tunes.size() - TITLES_NAMED;
    return more > 0 ? named + " and %d more".formatted(more) : named;
  }
}
