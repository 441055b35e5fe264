package fingering.musicxml.file;

import com.google.common.base.Ascii;
import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import fingering.musicxml.UnreadableScoreException;
import fingering.tables.FingeringException;
import fingering.tables.NearWord;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Limits on what a score file may contain; larger files are refused.
 *
 * @param values the value of every limit
 */
public record ScoreLimits(ImmutableMap<ScoreLimit, Long> values) {

  /** The default limits. */
  public static final ScoreLimits DEFAULT =
      new ScoreLimits(
          Stream.of(ScoreLimit.values())
              .collect(Maps.toImmutableEnumMap(limit -> limit, ScoreLimit::defaultValue)));

  private static final Pattern SETTING =
      Pattern.compile("\\s*(\\w+)\\s*=\\s*(\\d{1,15})([kmg]?)\\s*");

  /**
   * Checks the values.
   *
   * @throws FingeringException if a limit has no value, or one out of its range
   */
  public ScoreLimits {
    for (ScoreLimit limit : ScoreLimit.values()) {
      Long value = values.get(limit);
      if (value == null || value < limit.min() || value > limit.max()) {
        throw new FingeringException(
            "The limit '%s' (%s) must be a number from %d to %d."
                .formatted(limit.key(), limit.words(), limit.min(), limit.max()));
      }
    }
  }

  /** Written out because the one that Java generates takes milliseconds at the first use. */
  @Override
  public String toString() {
    return values.toString();
  }

  /** Returns the value of a limit. */
  public long of(ScoreLimit limit) {
    return Objects.requireNonNull(values.get(limit));
  }

  /**
   * Returns these limits with another value for one of them.
   *
   * @throws FingeringException if the value is out of its range
   */
  public ScoreLimits with(ScoreLimit limit, long value) {
    Map<ScoreLimit, Long> changed = new EnumMap<>(values);
    changed.put(limit, value);
    return new ScoreLimits(Maps.immutableEnumMap(changed));
  }

  /**
   * Returns these limits with the values in a text such as {@code measures=20000,bytes=64M}; K, M
   * and G mean 1024, 1024² and 1024³.
   *
   * @throws FingeringException if the text is not a list of this form, or a value is out of its
   *     range
   */
  public ScoreLimits with(String text) {
    ScoreLimits limits = this;
    for (String setting : Splitter.on(',').split(Ascii.toLowerCase(text))) {
      Matcher parts = SETTING.matcher(setting);
      if (!parts.matches()) {
        throw new FingeringException(
            "'%s' is not a limit: write a name and a number, such as measures=20000 or bytes=64M."
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
                    "'%s' is not the name of a limit; %s"
                        .formatted(
                            key,
                            NearWord.advice(
                                key,
                                Stream.of(ScoreLimit.values()).map(ScoreLimit::key).toList()))));
  }

  /**
   * Refuses a file that exceeds a limit.
   *
   * @param found the quantity found
   * @param what the name of the file in messages, as the beginning of a sentence
   * @throws UnreadableScoreException if the quantity exceeds the limit
   */
  void check(ScoreLimit limit, long found, String what) {
    if (found > of(limit)) {
      throw new UnreadableScoreException(
          "%s has more than %d %s and is not read: check that it is a score, split it if it is, or raise the limit '%s'."
              .formatted(what, of(limit), limit.words(), limit.key()));
    }
  }
}
