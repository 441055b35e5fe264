package fingering.web.lesson;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Range;
import fingering.demand.FixNote;
import fingering.lesson.LessonPlan;
import fingering.music.Passage;
import fingering.page.NoteWays;
import fingering.page.live.DemandsView;
import fingering.page.live.DemandsView.Chip;
import fingering.plan.Plan;
import fingering.search.Cancellation;
import fingering.verdict.PlanFigures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The demands on the chosen plan in words, with their prices. */
public final class DemandChips {
  private static final String FIX = "fix";

  /** More fixed notes are folded away, and have no prices. */
  private static final int FEW = 8;

  private DemandChips() {}

  /**
   * The demands on a plan, without fixed notes if there are many.
   *
   * @param address the address of the lesson
   * @param priced whether to compute what each demand costs, which takes a plan for each
   */
  public static DemandsView view(
      String address, Planned planned, Optional<LessonPlan> chosen, boolean priced) {
    int fixed = chosen.map(plan -> plan.demands().get(FIX).size()).orElse(0);
    boolean many = fixed > FEW;
    return new DemandsView(
        address,
        chips(planned, chosen, key -> !(many && key.equals(FIX)), priced),
        many ? fixed : 0,
        priced);
  }

  /** All demands of a plan, without prices. */
  public static ImmutableList<Chip> all(Planned planned, Optional<LessonPlan> chosen) {
    return chips(planned, chosen, key -> true, false);
  }

  /** The fixed notes of a plan, without prices. */
  public static ImmutableList<Chip> fixed(Planned planned, Optional<LessonPlan> chosen) {
    return chips(planned, chosen, key -> key.equals(FIX), false);
  }

  private static ImmutableList<Chip> chips(
      Planned planned, Optional<LessonPlan> chosen, Predicate<String> shown, boolean priced) {
    ImmutableList.Builder<Chip> chips = ImmutableList.builder();
    chosen.ifPresent(
        plan ->
            plan.demands()
                .forEach(
                    (key, value) -> {
                      if (shown.test(key)) {
                        chips.add(
                            new Chip(
                                key,
                                value,
                                words(planned, key, value),
                                priced ? price(planned, plan, key, value) : "",
                                measure(planned.passage(), key, value)));
                      }
                    }));
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
    if (key.equals(FIX)) {
      return LessonEdit.fixed(passage, value).stream()
          .map(moment -> passage.moments().get(moment).place().measureIndex())
          .findFirst()
          .orElse(-1);
    }
    return NamedMeasures.of(value, passage).map(Range::lowerEndpoint).orElse(-1);
  }
}
