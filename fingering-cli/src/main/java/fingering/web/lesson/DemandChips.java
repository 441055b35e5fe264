package fingering.web.lesson;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.demand.FixNote;
import fingering.demand.MeasureSpan;
import fingering.lesson.LessonPlan;
import fingering.music.Passage;
import fingering.page.NoteWays;
import fingering.page.live.DemandsView.Chip;
import fingering.plan.Plan;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import fingering.verdict.PlanFigures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The demands on the chosen plan in words, with their prices. */
public final class DemandChips {
  private DemandChips() {}

  /**
   * The demands of a plan.
   *
   * @param priced whether to compute what each costs, which takes a plan for each
   */
  public static ImmutableList<Chip> of(
      Planned planned, Optional<LessonPlan> chosen, boolean priced) {
    ImmutableList.Builder<Chip> chips = ImmutableList.builder();
    chosen.ifPresent(
        plan ->
            plan.demands()
                .forEach(
                    (key, value) ->
                        chips.add(
                            new Chip(
                                key,
                                value,
                                words(planned, key, value),
                                priced ? price(planned, plan, key, value) : "",
                                measure(planned.passage(), key, value)))));
    return chips.build();
  }

  /** A demand of a lesson in words. */
  private static String words(Planned planned, String key, String value) {
    String words =
        planned.advice().planner().parser().read(key, value).stream()
            .map(demand -> demand instanceof FixNote fix ? NoteWays.fixed(fix) : demand.text())
            .collect(Collectors.joining(", "));
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** What the plan saves without a demand. */
  private static String price(Planned planned, LessonPlan plan, String key, String value) {
    Plan without =
        planned
            .advice()
            .plan(plan.without((k, v) -> k.equals(key) && v.equals(value)), Cancellation.NEVER);
    long points = planned.plan().total() - without.total();
    if (points == 0 || without.sameFingering(planned.plan())) {
      return text("demand.nothing");
    }
    List<String> saved =
        NoteWays.figures(PlanFigures.of(without).minus(PlanFigures.of(planned.plan())));
    return saved.isEmpty()
        ? text("demand.little")
        : text("demand.without", String.join(", ", saved));
  }

  private static int measure(Passage passage, String key, String value) {
    try {
      if (key.equals("fix")) {
        return LessonEdit.fixed(passage, value).stream()
            .map(moment -> passage.moments().get(moment).place().measureIndex())
            .findFirst()
            .orElse(-1);
      }
      int at = value.lastIndexOf('@');
      return at < 0
          ? -1
          : MeasureSpan.parse(value.substring(at + 1)).measureIndices(passage).lowerEndpoint();
    } catch (FingeringException e) {
      return -1;
    }
  }
}
