package fingering.playability;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import fingering.tempo.PlayerSpeed;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads and writes the file of a level. */
final class LevelFile {
  static final Splitter COMMAS = Splitter.on(',').trimResults().omitEmptyStrings();

  private static final Pattern LINE =
      Pattern.compile("([a-z][a-z-]*)\\s*=\\s*([^#]*[^#\\s])\\s*(?:#\\s*(.*))?");
  private static final Pattern NUMBER = Pattern.compile("(\\d{1,5}(?:\\.\\d{1,3})?)(?: ?(%|s))?");
  private static final ImmutableSet<String> CLEFS =
      ImmutableSet.of("treble", "alto", "tenor", "bass");

  private LevelFile() {}

  static CheckLevel parse(String name, String text) {
    Map<Threshold, CheckLevel.Setting> settings = new EnumMap<>(Threshold.class);
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      if (line.isBlank() || line.strip().startsWith("#")) {
        continue;
      }
      String where = name + ", line " + number + ": ";
      Matcher matcher = LINE.matcher(line.strip());
      if (!matcher.matches()) {
        throw new FingeringException(
            where + "write a key, a value and its source, such as 'mute-on = 3 s # my teacher'");
      }
      Threshold threshold = threshold(where, matcher.group(1));
      String value = matcher.group(2);
      if (!fits(threshold.form(), value, threshold)) {
        throw new FingeringException(
            where + "'" + value + "' is not " + threshold.form().example());
      }
      String source = matcher.group(3) == null ? "" : matcher.group(3).strip();
      if (source.isEmpty()) {
        throw new FingeringException(
            where
                + "say where '"
                + threshold.key()
                + "' is from, behind a #: a book, a teacher, or 'common practice'");
      }
      if (settings.put(threshold, new CheckLevel.Setting(value, source)) != null) {
        throw new FingeringException(
            where + "'" + threshold.key() + "' stands twice; take one out");
      }
    }
    String missing =
        Stream.of(Threshold.values())
            .filter(threshold -> !settings.containsKey(threshold))
            .map(Threshold::key)
            .collect(Collectors.joining("', '"));
    if (!missing.isEmpty()) {
      throw new FingeringException(
          name + " says nothing of '" + missing + "'; add a line for each");
    }
    return new CheckLevel(name, ImmutableMap.copyOf(settings));
  }

  private static Threshold threshold(String where, String key) {
    return Stream.of(Threshold.values())
        .filter(threshold -> threshold.key().equals(key))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    where + "there is no '" + key + "'; correct its name, or take the line out"));
  }

  private static boolean fits(Threshold.Form form, String value, Threshold threshold) {
    return switch (form) {
      case NAME ->
          threshold == Threshold.PLAN
              ? Weights.presets().contains(value)
              : PlayerSpeed.all().stream().anyMatch(level -> level.name().equals(value));
      case PERCENT -> unit(value).filter(unit -> !unit.equals("s")).isPresent() && whole(value);
      case SECONDS -> unit(value).filter(unit -> !unit.equals("%")).isPresent();
      case NUMBER -> unit(value).filter(String::isEmpty).isPresent() && whole(value);
      case YES_NO -> value.equals("yes") || value.equals("no");
      case POSITION -> value.equals("any") || isPosition(value);
      case CLEFS -> CLEFS.containsAll(COMMAS.splitToList(value));
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

  /** The unit behind a number, often empty; no unit at all where it is no number. */
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
      throw new FingeringException("'" + value + "' is no number");
    }
    return Double.parseDouble(matcher.group(1));
  }

  /** The severity of that name. */
  static Severity severity(String value) {
    return Severity.valueOf(value.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  static String write(CheckLevel level) {
    StringBuilder text = new StringBuilder();
    text.append("# What can be asked of players of the level ").append(level.name()).append(".\n");
    for (Threshold threshold : Threshold.values()) {
      CheckLevel.Setting setting = level.setting(threshold);
      text.append("\n# ")
          .append(threshold.explanation())
          .append('\n')
          .append(threshold.key())
          .append(" = ")
          .append(setting.value())
          .append(" # ")
          .append(setting.source())
          .append('\n');
    }
    return text.toString();
  }
}
