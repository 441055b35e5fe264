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
 * Rules on what a player has not learned. It is dear and not forbidden, so that there is always a
 * plan.
 */
final class PlayerRules {
  static final String POSITION = "new-position";
  static final String PATTERN = "new-finger-pattern";
  static final String SPACING = "new-finger-spacing";
  static final String EXTENSION = "new-extension";
  static final String SHIFT = "new-shift";

  private PlayerRules() {}

  /** The rules for a player; where nothing is said of what was learned they charge nothing. */
  static ImmutableList<CostRule> of(Player player) {
    UnmetPrerequisites unlearned = new UnmetPrerequisites(player);
    return ImmutableList.of(
        noteRule(
            POSITION,
            "New position",
            "The player has not learned this position.",
            player.positions().isPresent(),
            unlearned::position),
        noteRule(
            PATTERN,
            "New finger pattern",
            "No finger pattern that the player has learned has the finger there.",
            player.patterns().isPresent(),
            unlearned::pattern),
        new NamedTransitionRule(
            SPACING,
            "New distance of fingers",
            "Two notes on a string lie under two fingers as in no pattern that the player has learned.",
            "pair of notes",
            player.patterns().isPresent()
                ? (transition, before, now) -> pairs(unlearned, transition, before, now)
                : NamedTransitionRule.Measure.NEVER),
        noteRule(
            EXTENSION,
            "New extension",
            "The player has not learned to stretch so out of the hand.",
            player.extensions().isPresent(),
            unlearned::extension),
        new NamedTransitionRule(
            SHIFT,
            "New kind of shift",
            "The player has not learned to shift so.",
            "kind",
            player.shifts().isPresent() ? unlearned::shift : NamedTransitionRule.Measure.NEVER));
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
      UnmetPrerequisites unlearned, Transition transition, Grip before, Grip now) {
    if (!unlearned.judgesPatterns() || !oneHand(transition, before, now)) {
      return 0;
    }
    long pairs = 0;
    for (int i = 0; i < before.placements().size(); i++) {
      for (int j = 0; j < now.placements().size(); j++) {
        pairs += unlearned.spacing(before.placements().get(i), now.placements().get(j)) ? 1 : 0;
      }
    }
    return pairs;
  }

  /** Whether one hand holds both grips without beginning anew between. */
  static boolean oneHand(Transition transition, Grip before, Grip now) {
    return !before.divided() && !now.divided() && !transition.acrossRest();
  }
}
