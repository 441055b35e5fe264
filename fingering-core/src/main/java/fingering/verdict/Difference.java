package fingering.verdict;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Successive measures in which two plans finger notes differently.
 *
 * @param measures the measures, at least one
 * @param change the figures of the plan in these measures, less those of the other
 * @param extraCost the points of the plan in these measures, less those of the other
 */
public record Difference(ImmutableList<Measure> measures, PlanFigures change, long extraCost) {

  /** Checks that there is a measure. */
  public Difference {
    if (measures.isEmpty()) {
      throw new IllegalArgumentException("a difference without measures");
    }
  }

  /** The measures as printed: {@code 17} or {@code 17–24}. */
  public String numbers() {
    String from = measures.get(0).number();
    String to = measures.get(measures.size() - 1).number();
    return measures.size() == 1 ? from : from + "–" + to;
  }

  /**
   * The differences of a plan from another of the same passage, in score order.
   *
   * @throws IllegalArgumentException if the plans do not have the same notes
   */
  public static ImmutableList<Difference> of(Plan plan, Plan other) {
    if (plan.notes().size() != other.notes().size()) {
      throw new IllegalArgumentException("plans of different music");
    }
    ImmutableList.Builder<Difference> differences = ImmutableList.builder();
    List<Measure> run = new ArrayList<>();
    int note = 0;
    for (Measure measure : plan.passage().measures()) {
      boolean differs = false;
      for (; note < plan.notes().size() && measureOf(plan, note) <= measure.index(); note++) {
        differs |= !plan.notes().get(note).sameFingering(other.notes().get(note));
      }
      if (differs) {
        run.add(measure);
      } else if (!run.isEmpty()) {
        differences.add(of(plan, other, ImmutableList.copyOf(run)));
        run.clear();
      }
    }
    if (!run.isEmpty()) {
      differences.add(of(plan, other, ImmutableList.copyOf(run)));
    }
    return differences.build();
  }

  private static int measureOf(Plan plan, int note) {
    return plan.notes().get(note).note().place().measureIndex();
  }

  private static Difference of(Plan plan, Plan other, ImmutableList<Measure> measures) {
    int from = measures.get(0).index();
    int to = measures.get(measures.size() - 1).index();
    return new Difference(
        measures,
        figures(plan, from, to).minus(figures(other, from, to)),
        cost(plan, from, to) - cost(other, from, to));
  }

  private static PlanFigures figures(Plan plan, int from, int to) {
    return PlanFigures.of(
        plan,
        note -> {
          int measure = note.note().place().measureIndex();
          return from <= measure && measure <= to;
        });
  }

  private static long cost(Plan plan, int from, int to) {
    return plan.charges().stream()
        .filter(
            charge -> {
              int measure = plan.passage().moments().get(charge.moment()).place().measureIndex();
              return from <= measure && measure <= to;
            })
        .mapToLong(charge -> charge.cost())
        .sum();
  }
}
