package fingering.scoring;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
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
public record NewSkill(int moment, String rule, String what) {

  /**
   * All that is new to a player on a path, in order of time: one entry for each unit that the
   * player's rules charge.
   */
  public static ImmutableList<NewSkill> of(
      Player player, ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    return new Finder(new Unlearned(player), moments, path).find();
  }

  private record Finder(
      Unlearned unlearned, ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    ImmutableList<NewSkill> find() {
      ImmutableList.Builder<NewSkill> found = ImmutableList.builder();
      for (int m = 0; m < path.size(); m++) {
        notes(m, found);
        if (m > 0) {
          way(m, found);
        }
      }
      return found.build();
    }

    private void notes(int m, ImmutableList.Builder<NewSkill> found) {
      each(m, PlayerRules.POSITION, unlearned::position, Finder::position, found);
      each(m, PlayerRules.PATTERN, unlearned::pattern, Unlearned::patternTold, found);
      each(m, PlayerRules.EXTENSION, unlearned::extension, Unlearned::extensionTold, found);
    }

    private void each(
        int m,
        String rule,
        Predicate<Placement> isNew,
        Function<Placement, String> told,
        ImmutableList.Builder<NewSkill> found) {
      for (Placement placement : path.get(m).placements()) {
        if (isNew.test(placement)) {
          found.add(new NewSkill(m, rule, told.apply(placement)));
        }
      }
    }

    private static String position(Placement placement) {
      Position position = placement.frame().position();
      return position.display() + " position";
    }

    private void way(int m, ImmutableList.Builder<NewSkill> found) {
      Passing passing = Passing.between(moments.get(m - 1), moments.get(m));
      Grip before = path.get(m - 1);
      Grip now = path.get(m);
      if (PlayerRules.oneHand(passing, before, now)) {
        for (Placement left : before.placements()) {
          for (Placement reached : now.placements()) {
            if (unlearned.spacing(left, reached)) {
              String told = Unlearned.spacingTold(left, reached);
              found.add(new NewSkill(m, PlayerRules.SPACING, told));
            }
          }
        }
      }
      if (unlearned.shift(passing, before, now) == 0) {
        return;
      }
      if (unlearned.shiftKind(passing, before, now)) {
        String told = ShiftKind.of(passing, before, now).told();
        found.add(new NewSkill(m, PlayerRules.SHIFT, told));
      }
      if (unlearned.slur(passing, before)) {
        found.add(new NewSkill(m, PlayerRules.SHIFT, ShiftKind.SLUR.told()));
      }
    }
  }
}
