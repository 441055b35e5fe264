package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import java.util.stream.Collectors;

/**
 * How quick a player is. The levels that come with the library bear the names of the presets of the
 * rules.
 *
 * @param name the level's name
 * @param actionPercent the time that fingers and bow take, in percent of a professional's
 * @param shiftPercent the time that shifts take, in percent of a professional's
 */
public record PlayerSpeed(String name, int actionPercent, int shiftPercent) {

  /**
   * Checks the components.
   *
   * @throws FingeringException if a percentage is not over 0
   */
  public PlayerSpeed {
    if (actionPercent <= 0 || shiftPercent <= 0) {
      throw new FingeringException("the level '" + name + "' takes no time; give percents over 0");
    }
  }

  /** The levels of the library, the quickest first. */
  public static ImmutableList<PlayerSpeed> all() {
    return PlayerSpeedTable.levels();
  }

  /**
   * A level of the library. Case does not matter.
   *
   * @throws FingeringException if there is none of that name
   */
  public static PlayerSpeed named(String name) {
    return all().stream()
        .filter(level -> level.name().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "there is no level '"
                        + name
                        + "'; choose one of "
                        + all().stream().map(PlayerSpeed::name).collect(Collectors.joining(", "))));
  }
}
