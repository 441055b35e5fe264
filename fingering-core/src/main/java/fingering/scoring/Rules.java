package fingering.scoring;

import com.google.common.collect.ImmutableList;

/** The rules of the library, in the order in which they are told. */
public final class Rules {
  private Rules() {}

  /** Every rule. */
  public static ImmutableList<CostRule> all() {
    return ImmutableList.<CostRule>builder()
        .addAll(ShiftRules.all())
        .addAll(CrossingRules.all())
        .addAll(FingerRules.all())
        .addAll(NoteRules.all())
        .addAll(SingingRules.all())
        .build();
  }
}
