package fingering.player;

import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Position;
import java.util.Optional;

/**
 * A player: default weights, instrument, hand, and the skills learned. Each component may be empty.
 * If a component for skills is empty, nothing is known and nothing is charged; otherwise all skills
 * that it does not list are new to the player.
 *
 * @param preset name of the weights, one of {@link Weights#presets()}
 * @param instrument the instrument, in its usual size
 * @param size size of the instrument, as {@link fingering.tables.Instruments#size} reads it
 * @param hand the left hand
 * @param positions the positions learned
 * @param patterns the finger patterns learned
 * @param extensions the extensions learned
 * @param shifts the kinds of shift learned
 */
public record Player(
    Optional<String> preset,
    Optional<Instrument> instrument,
    Optional<String> size,
    Optional<LeftHand> hand,
    Optional<ImmutableSet<Position>> positions,
    Optional<ImmutableSet<FingerPattern>> patterns,
    Optional<ImmutableSet<Extension>> extensions,
    Optional<ImmutableSet<ShiftKind>> shifts) {

  /** A player about whom nothing is known. */
  public static final Player UNKNOWN =
      new Player(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /**
   * Reads a player file, which is YAML.
   *
   * @param name the name of the file, for messages
   * @throws FingeringException if the text cannot be read; the message is one sentence with the
   *     line
   */
  public static Player parse(String name, String text) {
    return PlayerFile.parse(name, text);
  }

  /** This player with only these positions learned. */
  public Player withPositions(ImmutableSet<Position> learned) {
    return new Player(
        preset, instrument, size, hand, Optional.of(learned), patterns, extensions, shifts);
  }

  /** This player with only these finger patterns learned. */
  public Player withPatterns(ImmutableSet<FingerPattern> learned) {
    return new Player(
        preset, instrument, size, hand, positions, Optional.of(learned), extensions, shifts);
  }

  /** This player with only these extensions learned. */
  public Player withExtensions(ImmutableSet<Extension> learned) {
    return new Player(
        preset, instrument, size, hand, positions, patterns, Optional.of(learned), shifts);
  }

  /** This player with only these kinds of shift learned. */
  public Player withShifts(ImmutableSet<ShiftKind> learned) {
    return new Player(
        preset, instrument, size, hand, positions, patterns, extensions, Optional.of(learned));
  }
}
