package fingering.audition;

import fingering.demand.Skill;
import fingering.plan.Plan;

/**
 * How the amounts of a skill are counted over the pieces: one by one where they add up, else in one
 * step from nothing to all.
 *
 * @param skill the skill, in the amount asked for
 * @param whole whether one piece has to show all of it
 */
record SkillScale(Skill skill, boolean whole) {
  static SkillScale of(Skill skill, boolean inOnePiece) {
    return new SkillScale(skill, inOnePiece || !skill.addsUp());
  }

  /** The step at which everything is shown. */
  int top() {
    return whole ? 1 : skill.asked();
  }

  /** The skill in the amount of a step, from 1. */
  Skill at(int step) {
    return whole ? skill : skill.asking(step);
  }

  /** The step of an amount. */
  int reached(int amount) {
    return whole ? (amount >= skill.asked() ? 1 : 0) : Math.min(amount, skill.asked());
  }

  /** The step that a plan reaches. */
  int reached(Plan plan) {
    return reached(RequiredSkill.amount(skill, plan));
  }
}
