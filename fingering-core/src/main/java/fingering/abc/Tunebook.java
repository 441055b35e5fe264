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
 * A text in ABC notation: one tune, or several that each begin with a field X: (ABC 2.1, file
 * structure). A text without that field is one tune. Immutable.
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
   * Reads where the tunes of a text begin and end. Whether they can be read is found out when one
   * is chosen.
   *
   * @param source how messages call the text: the name of its file
   * @throws AbcException if the text holds no tune
   */
  public static Tunebook parse(String source, String text) {
    List<SourceLine> lines = new ArrayList<>();
    for (String line : text.lines().toList()) {
      lines.add(printable(new SourceLine(source, lines.size() + 1, line)));
    }
    ImmutableList<TuneSource> tunes =
        lines.stream().anyMatch(Tunebook::begins)
            ? numbered(lines)
            : ImmutableList.of(alone(source, lines));
    return new Tunebook(source, tunes);
  }

  private static SourceLine printable(SourceLine line) {
    for (int i = 0; i < line.text().length(); i++) {
      char c = line.text().charAt(i);
      if ((c < ' ' && c != '\t') || c == 0xFFFE || c == 0xFFFF) {
        throw line.wrong(
            i, "a character stands here that cannot be printed: see that this is a text.");
      }
    }
    return line;
  }

  private static boolean begins(SourceLine line) {
    return line.field() && line.letter() == 'X';
  }

  private static boolean says(SourceLine line) {
    return !line.blank() && !line.comment();
  }

  private static TuneSource alone(String source, List<SourceLine> lines) {
    int from = 0;
    while (from < lines.size() && lines.get(from).blank()) {
      from++;
    }
    int to = from;
    while (to < lines.size() && !lines.get(to).blank()) {
      to++;
    }
    if (lines.subList(from, to).stream().noneMatch(Tunebook::says)) {
      throw new AbcException(
          "%s holds no tune: type some notes, as in K:D and D2 FA d4.".formatted(source));
    }
    lines.subList(to, lines.size()).stream()
        .filter(Tunebook::says)
        .findFirst()
        .ifPresent(
            line -> {
              throw line.wrong(
                  0,
                  "an empty line ends a tune, and this stands behind one: take the empty line out, or begin each tune with X: and a number.");
            });
    return TuneSource.of(
        ImmutableList.of(), ImmutableList.copyOf(lines.subList(from, to)), Optional.empty());
  }

  private static ImmutableList<TuneSource> numbered(List<SourceLine> lines) {
    int at = 0;
    while (!begins(lines.get(at))) {
      at++;
    }
    ImmutableList<SourceLine> shared = shared(lines.subList(0, at));
    ImmutableList.Builder<TuneSource> tunes = ImmutableList.builder();
    while (at < lines.size()) {
      int next = at + 1;
      while (next < lines.size() && !begins(lines.get(next))) {
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
              lines.subList(end, next).stream().filter(Tunebook::says).findFirst()));
      at = next;
    }
    return tunes.build();
  }

  /** The fields of the file's header, which hold for all its tunes. */
  private static ImmutableList<SourceLine> shared(List<SourceLine> before) {
    ImmutableList.Builder<SourceLine> shared = ImmutableList.builder();
    for (SourceLine line : before) {
      if (line.blank()) {
        break;
      }
      if (line.field() && (line.letter() == 'K' || line.letter() == 'T')) {
        throw line.wrong(0, "a tune begins with X: and its number: put this line below it.");
      }
      if (line.field() || line.comment()) {
        shared.add(line);
      }
    }
    return shared.build();
  }

  /** The tunes, each by number and title, as in a list to choose from. */
  public ImmutableList<String> tunes() {
    return tunes.stream().map(TuneSource::toString).collect(ImmutableList.toImmutableList());
  }

  /**
   * Reads one of the tunes.
   *
   * @param number the number in its X: field; empty for the only tune
   * @throws AbcException if there is no such tune, if there are several to choose from, or if it
   *     cannot be read
   */
  public TuneScore choose(Optional<String> number) {
    return TuneScore.of(number.map(this::numbered).orElseGet(this::only));
  }

  private TuneSource only() {
    if (tunes.size() > 1) {
      throw new AbcException(
          "%s holds %d tunes; choose one with --tune: %s".formatted(source, tunes.size(), list()));
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
          "%s holds %d tunes with the number %s: give each a number of its own in its field X:."
              .formatted(source, found.size(), number.strip()));
    }
    if (found.isEmpty()) {
      String there = list();
      throw new AbcException(
          there.isBlank()
              ? "%s holds a single tune without a number: leave out --tune.".formatted(source)
              : "%s holds no tune %s; choose one with --tune: %s"
                  .formatted(source, number.strip(), there));
    }
    return found.get(0);
  }

  private String list() {
    String named =
        tunes.stream()
            .limit(TITLES_NAMED)
            .map(TuneSource::toString)
            .collect(Collectors.joining(", "));
    int untold = tunes.size() - TITLES_NAMED;
    return untold > 0 ? named + " and %d more".formatted(untold) : named;
  }
}
