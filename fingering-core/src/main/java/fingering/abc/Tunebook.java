package fingering.abc;

import com.google.common.collect.ImmutableList;
import fingering.abc.reading.TuneSource;
import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.SourceLine;
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
    for (String line : text.lines().toList()) {
      lines.add(printable(new SourceLine(source, lines.size() + 1, line)));
    }
    ImmutableList<TuneSource> tunes =
        lines.stream().anyMatch(Tunebook::beginsTune)
            ? numbered(lines)
            : ImmutableList.of(onlyTune(source, lines));
    return new Tunebook(source, tunes);
  }

  private static SourceLine printable(SourceLine line) {
    for (int i = 0; i < line.text().length(); i++) {
      char c = line.text().charAt(i);
      if ((c < ' ' && c != '\t') || c == 0xFFFE || c == 0xFFFF) {
        throw line.error(
            i, "this character cannot be printed: check that the file is a text file.");
      }
    }
    return line;
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
    int to = from;
    while (to < lines.size() && !lines.get(to).blank()) {
      to++;
    }
    if (lines.subList(from, to).stream().noneMatch(Tunebook::hasContent)) {
      throw new AbcException(
          "%s contains no tune: type some notes, such as D2 FA d4 below K:D.".formatted(source));
    }
    lines.subList(to, lines.size()).stream()
        .filter(Tunebook::hasContent)
        .findFirst()
        .ifPresent(
            line -> {
              throw line.error(
                  0,
                  "this line comes after an empty line, which ends the tune: remove the empty line, or begin each tune with X: and a number.");
            });
    return TuneSource.of(
        ImmutableList.of(), ImmutableList.copyOf(lines.subList(from, to)), Optional.empty());
  }

  private static ImmutableList<TuneSource> numbered(List<SourceLine> lines) {
    int at = 0;
    while (!beginsTune(lines.get(at))) {
      at++;
    }
    ImmutableList<SourceLine> shared = shared(lines.subList(0, at));
    ImmutableList.Builder<TuneSource> tunes = ImmutableList.builder();
    while (at < lines.size()) {
      int next = at + 1;
      while (next < lines.size() && !beginsTune(lines.get(next))) {
        next++;
      }
      int end = at;
      while (end < next && !lines.get(end).blank()) {
        end++;
      }
      tunes.add(
          TuneSource.of(
              shared,
              ImmutableList.copyOf(lines.subList(at, end)),
              lines.subList(end, next).stream().filter(Tunebook::hasContent).findFirst()));
      at = next;
    }
    return tunes.build();
  }

  /** The fields of the file header, which apply to all tunes. */
  private static ImmutableList<SourceLine> shared(List<SourceLine> before) {
    ImmutableList.Builder<SourceLine> shared = ImmutableList.builder();
    for (SourceLine line : before) {
      if (line.blank()) {
        break;
      }
      if (line.field() && (line.letter() == 'K' || line.letter() == 'T')) {
        throw line.error(0, "a tune begins with X: and its number: put this line below X:.");
      }
      if (line.field() || line.comment()) {
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
   * Reads one of the tunes.
   *
   * @param number the number in its X: field; empty for the only tune
   * @throws AbcException if there is no such tune, if several match, or if it cannot be read
   */
  public TuneScore choose(Optional<String> number) {
    return TuneScore.of(number.map(this::numbered).orElseGet(this::only));
  }

  private TuneSource only() {
    if (tunes.size() > 1) {
      throw new AbcException(
          "%s contains %d tunes; choose one with --tune: %s"
              .formatted(source, tunes.size(), list()));
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
              ? "%s contains a single tune without a number: leave out --tune.".formatted(source)
              : "%s contains no tune %s; choose one with --tune: %s"
                  .formatted(source, number.strip(), choices));
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
