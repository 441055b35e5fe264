package fingering.page.student;

import com.google.common.collect.ImmutableSet;
import fingering.player.Extension;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.player.ShiftKind;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.Arrays;
import java.util.Optional;

/** What a new student of a level has usually learned (common practice, no source). */
final class UsualSkills {
  private UsualSkills() {}

  /**
   * A player with the usual skills. Nothing is said about an advanced player, so nothing is new.
   *
   * @param level the level, as a preset
   * @param kind the kind of instrument; empty if it is not known
   */
  static Player of(String level, Optional<HandKind> kind) {
    return switch (level) {
      case "beginner" -> beginner(kind);
      case "intermediate" -> intermediate(kind);
      default -> Player.UNKNOWN;
    };
  }

  private static Player beginner(Optional<HandKind> kind) {
    Player player =
        Player.UNKNOWN
            .withPositions(ImmutableSet.of(Position.FIRST))
            .withExtensions(ImmutableSet.of())
            .withShifts(ImmutableSet.of());
    return kind.map(
            one ->
                player.withPatterns(
                    one == HandKind.VIOLIN
                        ? ImmutableSet.of(FingerPattern.FIRST_SECOND, FingerPattern.SECOND_THIRD)
                        : ImmutableSet.of(FingerPattern.CLOSED)))
        .orElse(player);
  }

  private static Player intermediate(Optional<HandKind> kind) {
    Player player =
        Player.UNKNOWN
            .withPositions(
                kind.equals(Optional.of(HandKind.VIOLIN))
                    ? ImmutableSet.of(Position.FIRST, Position.THIRD)
                    : ImmutableSet.of(
                        Position.HALF,
                        Position.FIRST,
                        Position.SECOND,
                        Position.THIRD,
                        Position.FOURTH))
            .withExtensions(
                kind.equals(Optional.of(HandKind.CELLO))
                    ? ImmutableSet.copyOf(Extension.values())
                    : ImmutableSet.of(Extension.FOURTH_FORWARD))
            .withShifts(
                ImmutableSet.of(
                    ShiftKind.REST,
                    ShiftKind.OPEN_STRING,
                    ShiftKind.SAME_FINGER,
                    ShiftKind.FIRST_FINGER));
    return kind.map(
            one ->
                player.withPatterns(
                    Arrays.stream(FingerPattern.values())
                        .filter(pattern -> pattern.fits(one))
                        .filter(
                            pattern ->
                                pattern != FingerPattern.APART
                                    && pattern != FingerPattern.AUGMENTED_SECOND
                                    && pattern != FingerPattern.THUMB)
                        .collect(ImmutableSet.toImmutableSet())))
        .orElse(player);
  }
}
