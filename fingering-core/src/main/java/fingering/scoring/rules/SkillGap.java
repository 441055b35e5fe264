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
 * Something that a fingering asks of a player who has not learned it.
 *
 * @param moment index of the moment in the passage, from 0
 * @param rule id of the rule that charges it
 * @param what what it is, in words: {@code 3rd position}
 */
public record SkillGap(int moment, String rule, String what) {

  /**
   * All that is new to a player on a path, in order of time: one entry for each unit that the
   * player's rules charge.
   */
  public static ImmutableList<SkillGap> of(
      Player player, ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    return new Finder(new UnmetPrerequisites(player), moments, path).find();
  }

  private record Finder(
      UnmetPrerequisites unlearned, ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    ImmutableList<SkillGap> find() {
      ImmutableList.Builder<SkillGap> found = ImmutableList.builder();
      for (int m = 0; m < path.size(); m++) {
        notes(m, found);
        if (m > 0) {
          way(m, found);
        }
      }
      return found.build();
    }

    private void notes(int m, ImmutableList.Builder<SkillGap> found) {
      each(m, PlayerRules.POSITION, unlearned::position, Finder::position, found);
      each(m, PlayerRules.PATTERN, unlearned::pattern, UnmetPrerequisites::patternTold, found);
      each(
          m, PlayerRules.EXTENSION, unlearned::extension, UnmetPrerequisites::extensionTold, found);
    }

    private void each(
        int m,
        String rule,
        Predicate<Placement> isNew,
        Function<Placement, String> told,
        ImmutableList.Builder<SkillGap> found) {
      for (Placement placement : path.get(m).placements()) {
        if (isNew.test(placement)) {
          found.add(new SkillGap(m, rule, told.apply(placement)));
        }
      }
    }

    private static String position(Placement placement) {
      Position position = placement.frame().position();
      return position.display() + " position";
    }

    private void way(int m, ImmutableList.Builder<SkillGap> found) {
      Transition transition = Transition.between(moments.get(m - 1), moments.get(m));
      Grip before = path.get(m - 1);
      Grip now = path.get(m);
      if (PlayerRules.oneHand(transition, before, now)) {
        for (Placement left : before.placements()) {
          for (Placement reached : now.placements()) {
            if (unlearned.spacing(left, reached)) {
              String told = UnmetPrerequisites.spacingTold(left, reached);
              found.add(new SkillGap(m, PlayerRules.SPACING, told));
            }
          }
        }
      }
      if (unlearned.shift(transition, before, now) == 0) {
        return;
      }
      if (unlearned.shiftKind(transition, before, now)) {
        String told = ShiftKind.of(transition, before, now).told();
        found.add(new SkillGap(m, PlayerRules.SHIFT, told));
      }
      if (unlearned.slur(transition, before)) {
        found.add(new SkillGap(m, PlayerRules.SHIFT, ShiftKind.SLUR.told()));
      }
    }
  }
}
