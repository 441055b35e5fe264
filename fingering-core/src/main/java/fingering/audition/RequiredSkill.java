package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.demand.Skill;
import fingering.plan.Plan;

/**
 * A skill that an audition asks for, and where it is shown.
 *
 * @param skill the skill, in the amount asked for
 * @param inOnePiece whether one piece has to show all of it; otherwise what all show adds up
 * @param freely how much each piece shows in its cheapest plan; 0 for a piece that does not count
 * @param shown how much each shows in the plans that are made
 * @param offers where the cheapest plans leave it short: the pieces that can make it up by
 *     themselves, the cheapest first
 * @param met whether the plans that are made show it
 */
public record RequiredSkill(
    Skill skill,
    boolean inOnePiece,
    ImmutableList<Integer> freely,
    ImmutableList<Integer> shown,
    ImmutableList<MarginalCost> offers,
    boolean met) {

  /** How much the cheapest plans show of it, as it is counted. */
  public int amountFreely() {
    return counted(freely);
  }

  /** How much the plans that are made show of it, as it is counted. */
  public int amountShown() {
    return counted(shown);
  }

  /** Whether the cheapest plans show it already. */
  public boolean metFreely() {
    return amountFreely() >= skill.asked();
  }

  private int counted(ImmutableList<Integer> amounts) {
    return inOnePiece
        ? amounts.stream().mapToInt(Integer::intValue).max().orElse(0)
        : amounts.stream().mapToInt(Integer::intValue).sum();
  }

  /** How much of a skill a plan shows. */
  static int amount(Skill skill, Plan plan) {
    return skill.amountIn(plan.passage(), plan.grips());
  }
}
