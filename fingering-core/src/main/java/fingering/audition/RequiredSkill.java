package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.demand.Skill;
import fingering.plan.Plan;

/**
 * A skill that an audition requires, and where it is shown.
 *
 * @param skill the skill, with the required amount
 * @param inOnePiece whether one piece has to show the whole amount; otherwise amounts are added
 * @param cheapest the amount in the cheapest plan of each piece; 0 for a piece that does not count
 * @param shown the amount in the plan of each piece; 0 for a piece that does not count
 * @param marginalCosts the pieces that can show the missing amount by themselves, cheapest first;
 *     empty if the cheapest plans show the skill
 * @param met whether the plans show the required amount
 */
public record RequiredSkill(
    Skill skill,
    boolean inOnePiece,
    ImmutableList<Integer> cheapest,
    ImmutableList<Integer> shown,
    ImmutableList<MarginalCost> marginalCosts,
    boolean met) {

  /** The amount in the cheapest plans: the sum over the pieces, or the most in one piece. */
  public int amountInCheapest() {
    return total(cheapest);
  }

  /** The amount in the plans: the sum over the pieces, or the most in one piece. */
  public int amountShown() {
    return total(shown);
  }

  /** Whether the cheapest plans show the required amount. */
  public boolean metByCheapest() {
    return amountInCheapest() >= skill.amount();
  }

  private int total(ImmutableList<Integer> amounts) {
    return inOnePiece
        ? amounts.stream().mapToInt(Integer::intValue).max().orElse(0)
        : amounts.stream().mapToInt(Integer::intValue).sum();
  }

  /** The amount of a skill that a plan shows. */
  static int amount(Skill skill, Plan plan) {
    return skill.amountShown(plan.passage(), plan.grips());
  }
}
