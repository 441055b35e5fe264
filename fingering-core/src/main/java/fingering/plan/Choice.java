package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.demand.MeasureSpan;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A fingering of some measures, with the cheapest plan that uses it.
 *
 * @param firstMoment index of the first moment of the measures in the passage, from 0
 * @param lastMoment index of the last moment of the measures
 * @param plan the cheapest plan with these strings and positions in the measures
 */
public record Choice(int firstMoment, int lastMoment, Plan plan) {
  /**
   * The best fingerings of some measures under a brief, best first. The first is that of the best
   * plan. Two of them differ in the string of a note that begins in the measures, or in the
   * position of a stopped one. The running time is that of one plan for each moment of the measures
   * and each choice.
   *
   * @param span the measures
   * @param k the maximum number of choices to return, from 1
   * @throws InfeasibleBriefException if no plan meets the brief
   * @throws FingeringException if the passage does not have these measures, no note begins in them,
   *     or k is below 1
   */
  public static ImmutableList<Choice> best(Planner planner, Brief brief, MeasureSpan span, int k) {
    BitSet moments = span.moments(planner.passage());
    if (k < 1) {
      throw new FingeringException(k + " choices cannot be listed; ask for 1 or more.");
    }
    if (moments.isEmpty()) {
      throw new FingeringException("No note begins" + span.phrase() + "; choose other measures.");
    }
    ImmutableList<Choice> choices =
        planner.choices(brief, moments, k).stream()
            .map(path -> planner.plan(brief, path))
            .map(plan -> new Choice(moments.nextSetBit(0), moments.length() - 1, plan))
            .collect(ImmutableList.toImmutableList());
    if (choices.isEmpty()) {
      throw planner.infeasible(brief);
    }
    return choices;
  }

  /** The planned notes that begin in the measures, in score order. */
  public ImmutableList<PlannedNote> notes() {
    return plan.notes().stream().filter(this::within).collect(ImmutableList.toImmutableList());
  }

  private boolean within(PlannedNote note) {
    return note.moment() >= firstMoment && note.moment() <= lastMoment;
  }

  /** The position of the last stopped note before the measures; empty if there is none. */
  public Optional<Position> positionBefore() {
    return plan.notes().stream()
        .filter(note -> note.moment() < firstMoment && !note.open())
        .reduce((earlier, later) -> later)
        .map(Choice::position);
  }

  /** The position of the first stopped note after the measures; empty if there is none. */
  public Optional<Position> positionAfter() {
    return plan.notes().stream()
        .filter(note -> note.moment() > lastMoment && !note.open())
        .findFirst()
        .map(Choice::position);
  }

  private static Position position(PlannedNote note) {
    return note.placement().frame().position();
  }

  /**
   * The notes before the measures whose fingering differs from that of another choice, in score
   * order.
   *
   * @param reference the choice to compare with; it is the {@code chosen} side of each change
   * @throws IllegalArgumentException if the other choice is of other measures or another passage
   */
  public ImmutableList<MomentExplanation.Change> changesBefore(Choice reference) {
    return changes(reference, 0, firstMoment - 1);
  }

  /**
   * The notes after the measures whose fingering differs from that of another choice, in score
   * order.
   *
   * @param reference the choice to compare with; it is the {@code chosen} side of each change
   * @throws IllegalArgumentException if the other choice is of other measures or another passage
   */
  public ImmutableList<MomentExplanation.Change> changesAfter(Choice reference) {
    return changes(reference, lastMoment + 1, plan.passage().moments().size() - 1);
  }

  private ImmutableList<MomentExplanation.Change> changes(Choice reference, int first, int last) {
    if (reference.firstMoment != firstMoment
        || reference.lastMoment != lastMoment
        || !reference.plan.passage().equals(plan.passage())) {
      throw new IllegalArgumentException("choices for different measures cannot be compared");
    }
    ImmutableList<PlannedNote> before = reference.plan.notes();
    ImmutableList<PlannedNote> after = plan.notes();
    return IntStream.range(0, before.size())
        .filter(i -> before.get(i).moment() >= first && before.get(i).moment() <= last)
        .filter(i -> !before.get(i).sameFingering(after.get(i)))
        .mapToObj(i -> new MomentExplanation.Change(before.get(i), after.get(i)))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * A comparison of the two plans. Its moment is the first of the measures.
   *
   * @param reference the choice to compare with; it is the {@code chosen} side of the comparison
   */
  public MomentExplanation comparedWith(Choice reference) {
    return new MomentExplanation(
        new Alternative(reference.firstMoment, reference.plan), new Alternative(firstMoment, plan));
  }
}
