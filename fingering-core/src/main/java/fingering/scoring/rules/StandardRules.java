package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.player.Player;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;

/** The rules of the library, in the order in which they are told. */
public final class StandardRules {
  private StandardRules() {}

  /** Every rule; those on what is new to a player charge nothing, since no player is known. */
  public static ImmutableList<CostRule> all() {
    return forPlayer(Player.UNKNOWN);
  }

  /** Every rule, those on what is new to a player made for this one. */
  public static ImmutableList<CostRule> forPlayer(Player player) {
    return ImmutableList.<CostRule>builder()
        .addAll(ShiftRules.all())
        .addAll(CrossingRules.all())
        .addAll(FingerRules.all())
        .addAll(NoteRules.all())
        .addAll(SoundRules.all())
        .addAll(PlayerRules.of(player))
        .build();
  }

  /** The scoring by every rule with the weights of common practice. */
  public static Scoring commonPractice() {
    return Scoring.of(all(), Weights.commonPractice());
  }
}
