package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.player.Player;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;

/** The rules of the library, in the order in which explanations list them. */
public final class StandardRules {
  private StandardRules() {}

  /** All rules. Those on new skills charge nothing, because no player is known. */
  public static ImmutableList<CostRule> all() {
    return forPlayer(Player.UNKNOWN);
  }

  /** All rules, with those on new skills for a player. */
  public static ImmutableList<CostRule> forPlayer(Player player) {
    return ImmutableList.<CostRule>builder()
        .addAll(ShiftRules.all())
        .addAll(CrossingRules.all())
        .addAll(FingerRules.all())
        .addAll(NoteRules.all())
        .addAll(ChordRules.all())
        .addAll(SoundRules.all())
        .addAll(PlayerRules.of(player))
        .build();
  }

  /** The scoring by all rules with the weights of the preset {@code common-practice}. */
  public static Scoring commonPractice() {
    return Scoring.of(all(), Weights.commonPractice());
  }
}
