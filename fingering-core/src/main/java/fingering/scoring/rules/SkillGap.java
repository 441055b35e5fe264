package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.player.Player;
import fingering.player.ShiftKind;
import fingering.player.UnmetPrerequisites;
import fingering.scoring.Transition;
import fingering.tables.Position;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A skill that a fingering needs and the player has not learned.
 *
 * @param moment index of the moment in the passage, from 0
 * @param rule id of the rule that charges it
 * @param skill the skill in words, such as {@code 3rd position}
 */
public record SkillGap(int moment, String rule, String skill) {

  /**
   * The skills on a path that are new to a player, in order of time: one entry for each unit that
   * the player's rules charge.
   */
  public static ImmutableList<SkillGap> of(
      Player player, ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    return new Finder(new UnmetPrerequisites(player), moments, path).find();
  }

  private record Finder(
      UnmetPrerequisites unmet, ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    ImmutableList<SkillGap> find() {
      ImmutableList.Builder<SkillGap> found = ImmutableList.builder();
      for (int m = 0; m < path.size(); m++) {
        notes(m, found);
        if (m > 0) {
          transition(m, found);
        }
      }
      return found.build();
    }

    private void notes(int m, ImmutableList.Builder<SkillGap> found) {
      each(m, PlayerRules.POSITION, unmet::isNewPosition, Finder::position, found);
      each(m, PlayerRules.PATTERN, unmet::isNewPattern, UnmetPrerequisites::describePattern, found);
      each(
          m,
          PlayerRules.EXTENSION,
          unmet::isNewExtension,
          UnmetPrerequisites::describeExtension,
          found);
    }

    private void each(
        int m,
        String rule,
        Predicate<Placement> isNew,
        Function<Placement, String> describe,
        ImmutableList.Builder<SkillGap> found) {
      for (Placement placement : path.get(m).placements()) {
        if (isNew.test(placement)) {
          found.add(new SkillGap(m, rule, describe.apply(placement)));
        }
      }
    }

    private static String position(Placement placement) {
      Position position = placement.frame().position();
      return position.display() + " position";
    }

    private void transition(int m, ImmutableList.Builder<SkillGap> found) {
      Transition transition = Transition.between(moments.get(m - 1), moments.get(m));
      Grip before = path.get(m - 1);
      Grip now = path.get(m);
      if (PlayerRules.sameHand(transition, before, now)) {
        for (Placement left : before.placements()) {
          for (Placement reached : now.placements()) {
            if (unmet.isNewSpacing(left, reached)) {
              String skill = UnmetPrerequisites.describeSpacing(left, reached);
              found.add(new SkillGap(m, PlayerRules.SPACING, skill));
            }
          }
        }
      }
      if (unmet.newShiftKinds(transition, before, now) == 0) {
        return;
      }
      if (unmet.isNewShiftKind(transition, before, now)) {
        String skill = ShiftKind.of(transition, before, now).phrase();
        found.add(new SkillGap(m, PlayerRules.SHIFT, skill));
      }
      if (unmet.isNewSlur(transition, before)) {
        found.add(new SkillGap(m, PlayerRules.SHIFT, ShiftKind.SLUR.phrase()));
      }
    }
  }
}
