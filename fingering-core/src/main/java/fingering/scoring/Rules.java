package fingering.scoring;

import com.google.common.collect.ImmutableList;

/** The rules of the library, in the order in which they are told. */
public final class Rules {
  private Rules() {}

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
        .addAll(SingingRules.all())
        .addAll(PlayerRules.of(player))
        .build();
  }
}
