package fingering.plan;

import java.util.Locale;

/** What is counted in a plan because it is hard for the hand or the bow, and what it is called. */
public enum PlanFigure {
  SHIFTS("shift"),
  CROSSINGS("string crossing"),
  FOURTH_FINGERS("fourth finger");

  private final String noun;

  PlanFigure(String noun) {
    this.noun = noun;
  }

  /** How often it occurs in a plan. */
  public int in(Plan plan) {
    return switch (this) {
      case SHIFTS -> plan.shifts();
      case CROSSINGS -> plan.crossings();
      case FOURTH_FINGERS -> plan.fourthFingers();
    };
  }

  /** The noun after a number: {@code shift} after 1, {@code shifts} after any other. */
  public String noun(int number) {
    return number == 1 ? noun : noun + "s";
  }

  /** A number with the noun: {@code 1 shift}, {@code 2 shifts}. */
  public String counted(int number) {
    return number + " " + noun(number);
  }

  /** The noun as a heading: {@code Shifts}. */
  public String heading() {
    return noun.substring(0, 1).toUpperCase(Locale.ROOT) + noun.substring(1) + "s";
  }
}
