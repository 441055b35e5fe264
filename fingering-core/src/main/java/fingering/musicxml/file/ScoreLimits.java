package fingering.musicxml.file;

import com.google.common.base.Ascii;
import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import fingering.musicxml.UnreadableScoreException;
import fingering.tables.FingeringException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How much a score file may hold before it is refused.
 *
 * @param figures the figure of every limit
 */
public record ScoreLimits(ImmutableMap<ScoreLimit, Long> figures) {

  /** The limits where nobody sets others. */
  public static final ScoreLimits USUAL =
      new ScoreLimits(
          Stream.of(ScoreLimit.values())
              .collect(Maps.toImmutableEnumMap(limit -> limit, ScoreLimit::usual)));

  private static final Pattern SETTING =
      Pattern.compile("\\s*(\\w+)\\s*=\\s*(\\d{1,15})([kmg]?)\\s*");

  /**
   * Checks the figures.
   *
   * @throws FingeringException if a limit has none, or one out of its range
   */
  public ScoreLimits {
    for (ScoreLimit limit : ScoreLimit.values()) {
      Long figure = figures.get(limit);
      if (figure == null || figure < limit.least() || figure > limit.most()) {
        throw new FingeringException(
            "The limit '%s' (%s) is a number from %d to %d."
                .formatted(limit.key(), limit.words(), limit.least(), limit.most()));
      }
    }
  }

  /** The figure of a limit. */
  public long of(ScoreLimit limit) {
    return Objects.requireNonNull(figures.get(limit));
  }

  /**
   * These limits with another figure for one of them.
   *
   * @throws FingeringException if the figure is out of its range
   */
  public ScoreLimits with(ScoreLimit limit, long figure) {
    Map<ScoreLimit, Long> changed = new EnumMap<>(figures);
    changed.put(limit, figure);
    return new ScoreLimits(Maps.immutableEnumMap(changed));
  }

  /**
   * These limits with the figures of a text such as {@code measures=20000,bytes=64M}; K, M and G
   * stand for 1024, 1024² and 1024³.
   *
   * @throws FingeringException if the text is no such list, or a figure is out of its range
   */
  public ScoreLimits with(String text) {
    ScoreLimits limits = this;
    for (String setting : Splitter.on(',').split(Ascii.toLowerCase(text))) {
      Matcher parts = SETTING.matcher(setting);
      if (!parts.matches()) {
        throw new FingeringException(
            "'%s' is no limit: write a name and a number, such as measures=20000 or bytes=64M."
                .formatted(setting.strip()));
      }
      int powers = "kmg".indexOf(parts.group(3)) + (parts.group(3).isEmpty() ? 0 : 1);
      long unit = 1L << (10 * powers);
      long number = Long.parseLong(parts.group(2));
      limits = limits.with(named(parts.group(1)), Math.min(number, Long.MAX_VALUE / unit) * unit);
    }
    return limits;
  }

  private static ScoreLimit named(String key) {
    return Stream.of(ScoreLimit.values())
        .filter(limit -> limit.key().equals(key))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "There is no limit '%s': set one of %s."
                        .formatted(
                            key,
                            Stream.of(ScoreLimit.values())
                                .map(ScoreLimit::key)
                                .collect(Collectors.joining(", ")))));
  }

  /**
   * Refuses what holds more than a limit allows.
   *
   * @param found how much it holds
   * @param what how messages call it, as the beginning of a sentence
   * @throws UnreadableScoreException if that is more than the limit
   */
  void check(ScoreLimit limit, long found, String what) {
    if (found > of(limit)) {
      throw new UnreadableScoreException(
          "%s has more than %d %s and is not read: check that it is a score, split it if it is, or allow more with --limit %s=NUMBER."
              .formatted(what, of(limit), limit.words(), limit.key()));
    }
  }
}
