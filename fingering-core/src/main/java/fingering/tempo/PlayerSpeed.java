package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import fingering.tables.NearWord;

/**
 * The speed of players of a level. The built-in levels have the names of the presets.
 *
 * @param name the name of the level
 * @param actionPercent the time for fingers and bow, in percent of a professional's, above 0
 * @param shiftPercent the time for shifts, in percent of a professional's, above 0
 */
public record PlayerSpeed(String name, int actionPercent, int shiftPercent) {

  /**
   * Checks the components.
   *
   * @throws FingeringException if a percentage is not above 0
   */
  public PlayerSpeed {
    if (actionPercent <= 0 || shiftPercent <= 0) {
      throw new FingeringException(
          "the level '" + name + "' has a percentage of 0 or less; give percentages above 0");
    }
  }

  /** The built-in levels, fastest first. */
  public static ImmutableList<PlayerSpeed> all() {
    return PlayerSpeedTable.levels();
  }

  /**
   * The built-in level with that name. Case does not matter.
   *
   * @throws FingeringException if there is no level of that name
   */
  public static PlayerSpeed named(String name) {
    return all().stream()
        .filter(level -> level.name().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "there is no level '%s'; %s"
                        .formatted(
                            name,
                            NearWord.advice(
                                name, all().stream().map(PlayerSpeed::name).toList()))));
  }
}
