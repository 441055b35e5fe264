package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.player.Player;
import fingering.player.UnmetPrerequisites;
import fingering.scoring.CostRule;
import fingering.scoring.Transition;
import java.util.function.Predicate;

/**
 * Rules on skills that a player has not learned. They are expensive but not forbidden, so there is
 * always a plan.
 */
final class PlayerRules {
  static final String POSITION = "new-position";
  static final String PATTERN = "new-finger-pattern";
  static final String SPACING = "new-finger-spacing";
  static final String EXTENSION = "new-extension";
  static final String SHIFT = "new-shift";

  private PlayerRules() {}

  /** The rules for a player. Rules on skills that the player does not list charge nothing. */
  static ImmutableList<CostRule> of(Player player) {
    UnmetPrerequisites unmet = new UnmetPrerequisites(player);
    return ImmutableList.of(
        noteRule(
            POSITION,
            "New position",
            "The player has not learned this position.",
            player.positions().isPresent(),
            unmet::isNewPosition),
        noteRule(
            PATTERN,
            "New finger pattern",
            "The player has learned no finger pattern with this finger at this place.",
            player.patterns().isPresent(),
            unmet::isNewPattern),
        new NamedTransitionRule(
            SPACING,
            "New finger spacing",
            "The player has learned no finger pattern with this spacing of two fingers.",
            "pair of notes",
            player.patterns().isPresent()
                ? (transition, before, now) -> pairs(unmet, transition, before, now)
                : NamedTransitionRule.Measure.NEVER),
        noteRule(
            EXTENSION,
            "New extension",
            "The player has not learned this extension.",
            player.extensions().isPresent(),
            unmet::isNewExtension),
        new NamedTransitionRule(
            SHIFT,
            "New kind of shift",
            "The player has not learned this kind of shift.",
            "kind",
            player.shifts().isPresent()
                ? unmet::newShiftKinds
                : NamedTransitionRule.Measure.NEVER));
  }

  private static CostRule noteRule(
      String id, String name, String explanation, boolean judged, Predicate<Placement> isNew) {
    return new NamedNoteRule(
        id,
        name,
        explanation,
        "note",
        judged ? (context, grip) -> count(grip, isNew) : NamedNoteRule.Measure.NEVER);
  }

  private static long count(Grip grip, Predicate<Placement> isNew) {
    long notes = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      notes += isNew.test(grip.placements().get(i)) ? 1 : 0;
    }
    return notes;
  }

  private static long pairs(
      UnmetPrerequisites unmet, Transition transition, Grip before, Grip now) {
    if (!unmet.checksPatterns() || !sameHand(transition, before, now)) {
      return 0;
    }
    long pairs = 0;
    for (int i = 0; i < before.placements().size(); i++) {
      for (int j = 0; j < now.placements().size(); j++) {
        pairs += unmet.isNewSpacing(before.placements().get(i), now.placements().get(j)) ? 1 : 0;
      }
    }
    return pairs;
  }

  /** Whether the same hand plays both grips without starting anew after a rest. */
  static boolean sameHand(Transition transition, Grip before, Grip now) {
    return !before.divided() && !now.divided() && !transition.acrossRest();
  }
}
