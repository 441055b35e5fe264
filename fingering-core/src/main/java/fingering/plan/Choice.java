package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.demand.MeasureSpan;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A way to take some measures, with the best plan that takes them so.
 *
 * @param from index of their first moment in the passage, from 0
 * @param to index of their last moment
 * @param plan the best plan with these strings and positions in them
 */
public record Choice(int from, int to, Plan plan) {
  /**
   * The ways in which a brief lets the notes of some measures be taken, each with the best plan
   * that takes them so; best first, the first being that of the best plan. Two ways differ in the
   * string or, stopped, the position of a note that begins there. Takes the time of a plan for each
   * moment of the measures and each way.
   *
   * @param span the measures
   * @param k how many, from 1; fewer where there are fewer
   * @throws InfeasibleBriefException if there is none
   * @throws FingeringException if the passage has no such measures, or none of its notes begins in
   *     them, or k is below 1
   */
  public static ImmutableList<Choice> of(Planner planner, Brief brief, MeasureSpan span, int k) {
    BitSet moments = span.in(planner.passage());
    if (k < 1) {
      throw new FingeringException(k + " ways cannot be searched; ask for 1 or more.");
    }
    if (moments.isEmpty()) {
      throw new FingeringException("No note begins" + span.told() + "; ask about other measures.");
    }
    ImmutableList<Choice> found =
        ChoiceSearch.best(planner.layers(brief), brief.shown(planner.passage()), moments, k)
            .stream()
            .map(path -> planner.plan(brief, path))
            .map(plan -> new Choice(moments.nextSetBit(0), moments.length() - 1, plan))
            .collect(ImmutableList.toImmutableList());
    if (found.isEmpty()) {
      throw planner.unmet(brief);
    }
    return found;
  }

  /** How the notes that begin in the measures are taken, in score order. */
  public ImmutableList<PlannedNote> notes() {
    return plan.notes().stream().filter(this::within).collect(ImmutableList.toImmutableList());
  }

  private boolean within(PlannedNote note) {
    return note.moment() >= from && note.moment() <= to;
  }

  /** The position of the last stopped note before the measures; empty where there is none. */
  public Optional<Position> comesFrom() {
    return plan.notes().stream()
        .filter(note -> note.moment() < from && !note.open())
        .reduce((earlier, later) -> later)
        .map(Choice::position);
  }

  /** The position of the first stopped note after the measures; empty where there is none. */
  public Optional<Position> goesOnIn() {
    return plan.notes().stream()
        .filter(note -> note.moment() > to && !note.open())
        .findFirst()
        .map(Choice::position);
  }

  private static Position position(PlannedNote note) {
    return note.placement().frame().position();
  }

  /**
   * What this choice changes of another before the measures: the notes of both, in score order.
   *
   * @throws IllegalArgumentException if the other is one of other measures
   */
  public ImmutableList<MomentExplanation.Change> changesBefore(Choice other) {
    return changes(other, 0, from - 1);
  }

  /** The same after the measures. */
  public ImmutableList<MomentExplanation.Change> changesAfter(Choice other) {
    return changes(other, to + 1, plan.passage().moments().size() - 1);
  }

  private ImmutableList<MomentExplanation.Change> changes(Choice other, int first, int last) {
    if (other.from != from || !other.plan.passage().equals(plan.passage())) {
      throw new IllegalArgumentException("two ways of different measures cannot be compared");
    }
    ImmutableList<PlannedNote> now = other.plan.notes();
    ImmutableList<PlannedNote> then = plan.notes();
    return IntStream.range(0, now.size())
        .filter(i -> now.get(i).moment() >= first && now.get(i).moment() <= last)
        .filter(i -> !now.get(i).takenLike(then.get(i)))
        .mapToObj(i -> new MomentExplanation.Change(now.get(i), then.get(i)))
        .collect(ImmutableList.toImmutableList());
  }

  /** This choice and another as two ways to take the first of the moments. */
  public MomentExplanation against(Choice other) {
    return new MomentExplanation(
        new Alternative(other.from, other.plan), new Alternative(from, plan));
  }
}
