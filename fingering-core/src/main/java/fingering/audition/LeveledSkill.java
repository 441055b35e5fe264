package fingering.audition;

import fingering.demand.Skill;
import fingering.plan.Plan;

/**
 * A required skill whose amounts are divided into levels. If amounts of several pieces are added, a
 * level is one unit of the amount. If one piece has to show it all, there are the levels 0 and 1.
 *
 * @param skill the skill, with the required amount
 * @param inOnePiece whether one piece has to show the whole amount
 */
record LeveledSkill(Skill skill, boolean inOnePiece) {
  static LeveledSkill of(Skill skill, boolean inOnePiece) {
    return new LeveledSkill(skill, inOnePiece || !skill.additive());
  }

  /** The level at which the whole amount is shown. */
  int target() {
    return inOnePiece ? 1 : skill.amount();
  }

  /** The skill with the amount of a level, from 1. */
  Skill atLevel(int level) {
    return inOnePiece ? skill : skill.withAmount(level);
  }

  /** The level that a plan reaches. */
  int level(Plan plan) {
    int amount = RequiredSkill.amount(skill, plan);
    return inOnePiece ? (amount >= skill.amount() ? 1 : 0) : Math.min(amount, skill.amount());
  }
}
