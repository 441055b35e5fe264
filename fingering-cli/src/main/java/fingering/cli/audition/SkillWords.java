package fingering.cli.audition;

import fingering.cli.text.DemandsText;
import fingering.demand.ShowPosition;
import fingering.demand.ShowShift;
import fingering.demand.ShowStay;
import fingering.demand.Skill;
import fingering.plan.Plan;

/** Skills and their amounts as text. */
final class SkillWords {
  private static final String SHOW = "show ";

  private SkillWords() {}

  /** A skill with the required amount: {@code 3rd position in 8 stopped notes}. */
  static String withAmount(Skill skill) {
    if (skill instanceof ShowShift && skill.amount() > 1) {
      return withAmount(skill.withAmount(1)) + ", " + amount(skill, skill.amount());
    }
    String words = skill.text();
    return words.startsWith(SHOW) ? words.substring(SHOW.length()) : words;
  }

  /** A skill without an amount: {@code 3rd position}. */
  static String withoutAmount(Skill skill) {
    if (skill instanceof ShowPosition one) {
      return one.position().display() + " position";
    }
    if (skill instanceof ShowStay one) {
      return "a stay in " + one.position().display() + " position";
    }
    return withAmount(skill instanceof ShowShift ? skill.withAmount(1) : skill);
  }

  /** An amount of a skill: {@code 8 notes}, {@code 2 measures}, {@code once}. */
  static String amount(Skill skill, int amount) {
    if (skill instanceof ShowShift) {
      return amount == 1 ? "once" : amount + " times";
    }
    String unit = skill instanceof ShowStay ? "measure" : "note";
    return amount + " " + unit + (amount == 1 ? "" : "s");
  }

  /** The measures in which a plan shows that amount: {@code m. 3–5, 9}. */
  static String measures(Plan plan, Skill skill, int amount) {
    return DemandsText.measures(plan, amount < skill.amount() ? skill.withAmount(amount) : skill);
  }
}
