package fingering.cli.option;

import com.google.common.base.Ascii;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.ITypeConverter;

/**
 * Which of the plans to take. A number is a position, as everywhere, and never a column of what
 * 'compare' shows.
 *
 * @param position the position by which a plan of 'compare' is called; empty for the plan of free
 *     choice
 */
public record PlanName(Optional<Position> position) {
  /** The cheapest plan of all. */
  static final PlanName FREE = new PlanName(Optional.empty());

  private static final String FREELY = "free";

  /**
   * Reads how a plan is called: {@code first}, {@code 3rd}, {@code 3}, {@code III}, {@code 3rd
   * position}, {@code free}, or {@code 1st to 3rd}, as 'compare' heads the second one.
   *
   * @throws FingeringException if no plan can be called so
   */
  public static PlanName parse(String text) {
    String word = Ascii.toLowerCase(text.strip());
    if (word.equals(FREELY) || word.equals("free choice")) {
      return FREE;
    }
    try {
      return new PlanName(
          Optional.of(word.equals("1st to 3rd") ? Position.SECOND : Position.parse(word)));
    } catch (FingeringException e) {
      throw new FingeringException(
          "'%s' is no plan; write first (or 1), third (3), second (2), or free".formatted(text), e);
    }
  }

  /** Whether the choice is free. */
  public boolean isFree() {
    return position.isEmpty();
  }

  /**
   * That plan.
   *
   * @param free what a plan of free choice has to meet
   * @throws FingeringException if there is none
   */
  Plan plan(PlanComparer comparer, Supplier<Brief> free) {
    if (isFree()) {
      return comparer.plan(free.get());
    }
    Position wanted = position.get();
    if (wanted.equals(Position.FIRST)) {
      return comparer.firstPositionPlan();
    }
    if (wanted.equals(Position.SECOND)) {
      return chosen(comparer.firstToThirdPlan(), comparer);
    }
    if (wanted.equals(Position.THIRD) || wanted.equals(comparer.upperPosition())) {
      return chosen(comparer.upperPositionPlan(), comparer);
    }
    throw new FingeringException(
        "No plan of 'compare' stays in %s position here; choose first, third (it stays in %s), second or free, or ask for the position with --show %s=8, eight notes in %s."
            .formatted(
                wanted.display(), comparer.upperPosition().display(), wanted, wanted.display()));
  }

  private static Plan chosen(Optional<Plan> plan, PlanComparer comparer) {
    return plan.orElseThrow(
        () ->
            new FingeringException(
                "No fingering of this passage shows what that plan must show (a stay in "
                    + comparer.upperPosition().display()
                    + " position, or 1st to 3rd); choose first or free."));
  }

  /** The position as it is typed, or {@code free}; it is read back. */
  @Override
  public String toString() {
    return position.map(Position::toString).orElse(FREELY);
  }

  static final class Converter implements ITypeConverter<PlanName> {
    @Override
    public PlanName convert(String text) {
      return ScoreOptions.converted(() -> parse(text));
    }
  }
}
