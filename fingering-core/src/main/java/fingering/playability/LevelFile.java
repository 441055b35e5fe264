package fingering.playability;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import fingering.tempo.PlayerSpeed;
import fingering.userfile.KnownKeys;
import fingering.userfile.UserFields;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the file of a level. */
final class LevelFile {
  static final Splitter COMMAS = Splitter.on(',').trimResults().omitEmptyStrings();

  private static final KnownKeys KEYS =
      KnownKeys.of(
          "a level file",
          Stream.of(Threshold.values())
              .map(threshold -> threshold.key() + ": " + threshold.form().example())
              .toList());

  private static final Pattern NUMBER = Pattern.compile("(\\d{1,5}(?:\\.\\d{1,3})?)(?: ?(%|s))?");
  private static final ImmutableSet<String> CLEFS =
      ImmutableSet.of("treble", "alto", "tenor", "bass");

  private LevelFile() {}

  static CheckLevel parse(String name, String text) {
    UserFields fields = UserFields.parse(name, text, KEYS);
    String missing =
        Stream.of(Threshold.values())
            .map(Threshold::key)
            .filter(key -> !fields.has(key))
            .collect(Collectors.joining("', '"));
    if (!missing.isEmpty()) {
      throw new FingeringException(
          name
              + " lacks '"
              + missing
              + "'; add a line for each, or begin with a copy of a level of the program");
    }
    ImmutableMap.Builder<Threshold, String> values = ImmutableMap.builder();
    for (Threshold threshold : Threshold.values()) {
      values.put(threshold, value(fields, threshold));
    }
    return new CheckLevel(name, values.buildOrThrow());
  }

  private static String value(UserFields fields, Threshold threshold) {
    return switch (threshold.form()) {
      case YES_NO -> fields.yesNo(threshold.key()).orElseThrow() ? "yes" : "no";
      case CLEFS ->
          String.join(
              ", ",
              fields
                  .list(threshold.key(), clef -> checked(threshold, clef))
                  .orElse(ImmutableList.of()));
      default -> fields.value(threshold.key(), value -> checked(threshold, value)).orElseThrow();
    };
  }

  private static String checked(Threshold threshold, String value) {
    if (!fits(threshold, value)) {
      throw new FingeringException("'" + value + "' is not " + threshold.form().description());
    }
    return value;
  }

  private static boolean fits(Threshold threshold, String value) {
    return switch (threshold.form()) {
      case NAME ->
          threshold == Threshold.PLAN
              ? Weights.presets().contains(value)
              : PlayerSpeed.all().stream().anyMatch(level -> level.name().equals(value));
      case PERCENT -> unit(value).filter(unit -> !unit.equals("s")).isPresent() && whole(value);
      case SECONDS -> unit(value).filter(unit -> !unit.equals("%")).isPresent();
      case NUMBER -> unit(value).filter(String::isEmpty).isPresent() && whole(value);
      case YES_NO -> value.equals("yes") || value.equals("no");
      case POSITION -> value.equals("any") || isPosition(value);
      case CLEFS -> CLEFS.contains(value);
      case SEVERITY -> Stream.of(Severity.values()).anyMatch(one -> one.id().equals(value));
    };
  }

  private static boolean isPosition(String value) {
    try {
      Position.parse(value);
      return true;
    } catch (FingeringException e) {
      return false;
    }
  }

  /** The unit after a number, which may be empty; empty if the value is not a number. */
  private static Optional<String> unit(String value) {
    Matcher matcher = NUMBER.matcher(value);
    return matcher.matches()
        ? Optional.of(Optional.ofNullable(matcher.group(2)).orElse(""))
        : Optional.empty();
  }

  private static boolean whole(String value) {
    return !value.contains(".");
  }

  /** The number in a value that fits its form. */
  static double number(String value) {
    Matcher matcher = NUMBER.matcher(value);
    if (!matcher.matches()) {
      throw new FingeringException("'" + value + "' is not a number");
    }
    return Double.parseDouble(matcher.group(1));
  }

  /** The severity of that name. */
  static Severity severity(String value) {
    return Severity.valueOf(value.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
