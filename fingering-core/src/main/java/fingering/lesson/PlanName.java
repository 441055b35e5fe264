package fingering.lesson;

import com.google.common.base.Ascii;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.Optional;

/**
 * The name of a plan. A number is always a position, never a column of 'compare'.
 *
 * @param position the position that names a plan of 'compare'; empty for the free plan
 * @param partly whether it is the plan that is only partly in that position
 */
public record PlanName(Optional<Position> position, boolean partly) {
  /** The cheapest plan. */
  public static final PlanName FREE = new PlanName(Optional.empty(), false);

  private static final String PARTLY = "partly";

  private static final String FREE_NAME = "free";

  /**
   * Parses a name: {@code first}, {@code 3rd}, {@code 3}, {@code III}, {@code 3rd position}, {@code
   * free}, {@code partly}, {@code partly 3rd}, or {@code 1st to 3rd}, a heading in 'compare'.
   *
   * @throws FingeringException if the text names no plan
   */
  public static PlanName parse(String text) {
    String word = Ascii.toLowerCase(text.strip());
    if (word.equals(FREE_NAME) || word.equals("free choice")) {
      return FREE;
    }
    boolean partly = word.startsWith(PARTLY);
    String position = partly ? word.substring(PARTLY.length()).strip() : word;
    try {
      return new PlanName(
          Optional.of(
              position.equals("1st to 3rd")
                  ? Position.SECOND
                  : partly && position.isEmpty() ? Position.THIRD : Position.parse(position)),
          partly);
    } catch (FingeringException e) {
      throw new FingeringException(
          "'%s' is not a plan; write first (or 1), third (3), partly, second (2), or free"
              .formatted(text),
          e);
    }
  }

  /** The name of a plan of 'compare'; empty for other plans. */
  public static Optional<PlanName> named(Plan plan) {
    try {
      return Optional.of(parse(plan.name()));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  /** Whether this is the free plan. */
  public boolean isFree() {
    return position.isEmpty();
  }

  /**
   * The plan of this name.
   *
   * @param free the brief of the free plan
   * @throws FingeringException if there is no such plan
   */
  public Plan plan(PlanComparer comparer, Brief free) {
    if (isFree()) {
      return comparer.plan(free);
    }
    Position wanted = position.get();
    boolean upper = wanted.equals(Position.THIRD) || wanted.equals(comparer.upperPosition());
    if (upper && partly) {
      return required(comparer.partlyUpperPlan(), comparer);
    }
    if (wanted.equals(Position.FIRST) && !partly) {
      return comparer.firstPositionPlan();
    }
    if (wanted.equals(Position.SECOND) && !partly) {
      return required(comparer.firstToThirdPlan(), comparer);
    }
    if (upper) {
      return required(comparer.upperPositionPlan(), comparer);
    }
    throw new FingeringException(
        "No compared plan stays in %s position here; choose first, third (it stays in %s), partly, second or free, or ask for the position with the demand 'show %s=8', eight notes in %s."
            .formatted(
                wanted.display(), comparer.upperPosition().display(), wanted, wanted.display()));
  }

  private static Plan required(Optional<Plan> plan, PlanComparer comparer) {
    return plan.orElseThrow(
        () ->
            new FingeringException(
                "No fingering of this passage shows what that plan must show (a stay in "
                    + comparer.upperPosition().display()
                    + " position, or 1st to 3rd); choose first or free."));
  }

  /**
   * Whether every comparison has a plan of this name; others only where their position is the upper
   * one.
   */
  public boolean known() {
    return position
        .map(one -> one.compareTo(Position.FIRST) >= 0 && one.compareTo(Position.THIRD) <= 0)
        .orElse(true);
  }

  /** The word after {@code --choose} and in a lesson: first, third, partly, second or free. */
  public String word() {
    return isFree()
        ? FREE_NAME
        : partly
            ? PARTLY
            : position.get().equals(Position.FIRST)
                ? "first"
                : position.get().equals(Position.SECOND) ? "second" : "third";
  }

  /** The position, or {@code free}; {@link #parse} reads it back. */
  @Override
  public String toString() {
    return (partly ? PARTLY + " " : "") + position.map(Position::toString).orElse(FREE_NAME);
  }
}
