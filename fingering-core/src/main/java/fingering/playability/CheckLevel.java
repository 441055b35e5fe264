package fingering.playability;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.NearWord;
import fingering.tables.Position;
import fingering.tempo.PlayerSpeed;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;

/**
 * The skills of players at a level. They are defined in a YAML file that a teacher can read and
 * change.
 *
 * @param name the name of the level
 * @param values the value of each threshold, in its form: {@code 3 s}
 */
public record CheckLevel(String name, ImmutableMap<Threshold, String> values) {
  private static final ImmutableList<String> PRESETS =
      ImmutableList.of("advanced", "common-practice", "intermediate", "beginner");

  /** The levels of students, by the name of their speed. */
  private static final ImmutableSet<String> STUDENTS = ImmutableSet.of("intermediate", "beginner");

  private static final String ANY = "any";

  /**
   * Checks the components.
   *
   * @throws FingeringException if a threshold has no value
   */
  public CheckLevel {
    for (Threshold threshold : Threshold.values()) {
      if (!values.containsKey(threshold)) {
        throw new FingeringException(name + " lacks '" + threshold.key() + "'");
      }
    }
  }

  /** Returns the names of the built-in levels, the most advanced first. */
  public static ImmutableList<String> presets() {
    return PRESETS;
  }

  /** Returns the built-in level of this name, in upper or lower case; empty if there is none. */
  public static Optional<String> presetName(String typed) {
    return PRESETS.stream().filter(typed.strip()::equalsIgnoreCase).findFirst();
  }

  /**
   * Returns a built-in level. Case does not matter.
   *
   * @throws FingeringException if there is no level of that name
   */
  public static CheckLevel preset(String name) {
    String known = known(name);
    return parse(known, text(known));
  }

  private static String known(String typed) {
    return presetName(typed)
        .orElseThrow(
            () ->
                new FingeringException(
                    "there is no level '%s'; %s"
                        .formatted(typed, NearWord.advice(typed, PRESETS))));
  }

  /**
   * Returns the file of a built-in level, to copy and change.
   *
   * @throws FingeringException if there is no level of that name
   */
  public static String text(String name) {
    String file = "levels/" + known(name) + ".yaml";
    try (InputStream in = CheckLevel.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + " is missing from the library");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads the file of a level, which is YAML and has a key for each threshold.
   *
   * @param name the name of the level, for messages too
   * @throws FingeringException if the text cannot be read; the message is one sentence with the
   *     line
   */
  public static CheckLevel parse(String name, String text) {
    return LevelFile.parse(name, text);
  }

  private String value(Threshold threshold, Threshold.Form form) {
    if (threshold.form() != form) {
      throw new IllegalArgumentException(threshold.key() + " is written as " + threshold.form());
    }
    return Objects.requireNonNull(values.get(threshold));
  }

  /**
   * Returns the seconds of a threshold.
   *
   * @throws IllegalArgumentException if its values have another form, as for all getters below
   */
  public double seconds(Threshold threshold) {
    return LevelFile.number(value(threshold, Threshold.Form.SECONDS));
  }

  /** Returns a percentage as a share, 1 for 100 %. */
  public double share(Threshold threshold) {
    return LevelFile.number(value(threshold, Threshold.Form.PERCENT)) / 100;
  }

  /** Returns a whole number. */
  public int number(Threshold threshold) {
    return (int) LevelFile.number(value(threshold, Threshold.Form.NUMBER));
  }

  /** Returns whether the value is yes. */
  public boolean yes(Threshold threshold) {
    return value(threshold, Threshold.Form.YES_NO).equals("yes");
  }

  /** Returns a severity. */
  public Severity severity(Threshold threshold) {
    return LevelFile.severity(value(threshold, Threshold.Form.SEVERITY));
  }

  /** Returns the highest position on an instrument; thumb position if there is no limit. */
  public Position highest(Instrument instrument) {
    String value =
        value(
            switch (instrument.id()) {
              case "viola" -> Threshold.HIGHEST_VIOLA;
              case "cello" -> Threshold.HIGHEST_CELLO;
              case "bass" -> Threshold.HIGHEST_BASS;
              default -> Threshold.HIGHEST_VIOLIN;
            },
            Threshold.Form.POSITION);
    return value.equals(ANY) ? Position.THUMB : Position.parse(value);
  }

  /** Returns the clefs that players of an instrument read, named as by {@code Clef.display}. */
  public ImmutableSet<String> clefs(Instrument instrument) {
    String value =
        value(
            switch (instrument.id()) {
              case "viola" -> Threshold.CLEFS_VIOLA;
              case "cello" -> Threshold.CLEFS_CELLO;
              case "bass" -> Threshold.CLEFS_BASS;
              default -> Threshold.CLEFS_VIOLIN;
            },
            Threshold.Form.CLEFS);
    return ImmutableSet.copyOf(LevelFile.COMMAS.splitToList(value));
  }

  /** Returns the weights that define the easiest fingering. */
  public Weights weights() {
    return Weights.preset(value(Threshold.PLAN, Threshold.Form.NAME));
  }

  /** Returns whether the players are students with a few years of lessons, or beginners. */
  public boolean students() {
    return STUDENTS.contains(playerSpeed().name());
  }

  /** Returns the speed of the players. */
  public PlayerSpeed playerSpeed() {
    return PlayerSpeed.named(value(Threshold.TEMPO, Threshold.Form.NAME));
  }
}
