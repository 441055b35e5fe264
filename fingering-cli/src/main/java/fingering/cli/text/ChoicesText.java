package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Iterables;
import fingering.cli.option.ScoringContext;
import fingering.cli.terminal.NumberRanges;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.demand.MeasureSpan;
import fingering.plan.Choice;
import fingering.plan.Comparison;
import fingering.plan.MomentExplanation;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.PlannedNote;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The ways to take some measures, side by side, and what each forces on the rest. */
public final class ChoicesText {
  private final ImmutableList<Choice> ways;
  private final int columns;
  private final StringBuilder text = new StringBuilder();

  private ChoicesText(ImmutableList<Choice> ways, int columns) {
    this.ways = ways;
    this.columns = columns;
  }

  /**
   * The table and the sentences below it.
   *
   * @param ways the ways, that of the plan first
   * @param wanted how many were asked for
   */
  public static String of(
      ImmutableList<Choice> ways,
      MeasureSpan span,
      int wanted,
      ScoringContext charging,
      int columns,
      TextStyle style) {
    ChoicesText page = new ChoicesText(ways, columns);
    List<Plan> named = new ArrayList<>();
    for (Choice way : ways) {
      named.add(way.plan().withName(PlanComparer.rankName(named.size() + 1)));
    }
    Choice best = ways.get(0);
    Comparison side =
        new Comparison(best.plan().passage(), ImmutableList.copyOf(named), ImmutableList.of());
    page.text.append(
        ComparisonText.some(
            side,
            charging,
            note -> note.moment() >= best.firstMoment() && note.moment() <= best.lastMoment(),
            columns,
            style));
    page.text.append(style.bold("The ways" + span.phrase())).append('\n');
    page.plan(named.get(0).name());
    for (int i = 1; i < named.size(); i++) {
      page.way(named.get(i).name(), ways.get(i));
    }
    if (ways.size() < wanted) {
      page.paragraph(
          ways.size() == 1
              ? "  There is no other way that this plan may take."
              : "  There are no more than " + ways.size() + " ways that this plan may take.");
    }
    page.text.append('\n');
    page.paragraph(
        "  A way is a string, and where it is stopped a position, for each note of the measures;"
            + " its points are those of the cheapest plan of the whole that has it.");
    page.text.append('\n');
    page.paragraph(SummaryText.CARE);
    return page.text.toString();
  }

  private void paragraph(String paragraph) {
    TextLayout.wrap(paragraph, columns, 2).forEach(line -> text.append(line).append('\n'));
  }

  private void plan(String name) {
    Choice best = ways.get(0);
    paragraph(
        "  %s: %d points, as in '%s', %s."
            .formatted(name, best.plan().total(), best.plan().name(), hand(best)));
  }

  private void way(String name, Choice way) {
    Choice best = ways.get(0);
    MomentExplanation why = way.comparedWith(best);
    List<String> told = new ArrayList<>();
    told.add(price(why.extraCost()) + ", " + hand(way));
    told.add(rest(way.changesBefore(best), way.changesAfter(best)));
    shifts("also shifts to", why.shiftsAdded()).ifPresent(told::add);
    shifts("does not shift to", why.shiftsSaved()).ifPresent(told::add);
    paragraph("  " + name + ": " + String.join("; ", told) + ".");
  }

  private static String price(long more) {
    String points = Math.abs(more) + (Math.abs(more) == 1 ? " point " : " points ");
    return more == 0
        ? "costs the same"
        : points
            + (more > 0 ? "more" : "less, but leaves the positions of the plan where it need not");
  }

  private static String hand(Choice way) {
    Optional<Position> from = way.positionBefore();
    Optional<Position> to = way.positionAfter();
    String comes = from.map(p -> "comes from " + p.display()).orElse("begins the passage");
    String goes = to.map(p -> "goes on in " + p.display()).orElse("ends it");
    return comes + " and " + (from.isEmpty() || to.isPresent() ? goes : "ends the passage");
  }

  private static String rest(
      List<MomentExplanation.Change> before, List<MomentExplanation.Change> after) {
    if (before.isEmpty() && after.isEmpty()) {
      return "nothing else changes";
    }
    return "changes "
        + (before.isEmpty() ? "nothing" : measures(before))
        + " before and "
        + (after.isEmpty() ? "nothing" : measures(after))
        + " after";
  }

  /** {@code 3 notes in m. 12–13, 15}. */
  private static String measures(List<MomentExplanation.Change> changes) {
    TreeSet<Integer> indices =
        changes.stream()
            .map(change -> change.other().note().place().measureIndex())
            .collect(Collectors.toCollection(TreeSet::new));
    return (changes.size() == 1 ? "1 note" : changes.size() + " notes")
        + " in m. "
        + NumberRanges.of(indices).stream()
            .map(
                run ->
                    number(changes, run.from())
                        + (run.from() == run.to() ? "" : "–" + number(changes, run.to())))
            .collect(Collectors.joining(", "));
  }

  private static String number(List<MomentExplanation.Change> changes, int index) {
    return Iterables.find(changes, c -> c.other().note().place().measureIndex() == index)
        .other()
        .note()
        .place()
        .measure();
  }

  private static Optional<String> shifts(String what, List<PlannedNote> notes) {
    return notes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            what
                + " "
                + notes.stream()
                    .map(
                        note ->
                            note.note().written().display()
                                + " in m. "
                                + note.note().place().measure())
                    .collect(Collectors.joining(", ")));
  }
}
