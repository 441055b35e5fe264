package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.demand.MeasureSpan;
import fingering.music.Place;
import fingering.plan.Choice;
import fingering.plan.Comparison;
import fingering.plan.MomentExplanation;
import fingering.plan.Plan;
import fingering.plan.PlanRank;
import fingering.plan.PlannedNote;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The fingerings of some measures side by side, and how each changes the rest of the plan. */
public final class ChoicesText {
  private final ImmutableList<Choice> choices;
  private final int columns;
  private final StringBuilder text = new StringBuilder();

  private ChoicesText(ImmutableList<Choice> choices, int columns) {
    this.choices = choices;
    this.columns = columns;
  }

  /**
   * Returns the table and the sentences below it.
   *
   * @param choices the fingerings, that of the plan first
   * @param wanted the requested number of fingerings
   */
  public static String of(
      ImmutableList<Choice> choices,
      MeasureSpan span,
      int wanted,
      ScoringContext scoring,
      int columns,
      TextStyle style) {
    ChoicesText page = new ChoicesText(choices, columns);
    List<Plan> named = new ArrayList<>();
    for (Choice choice : choices) {
      named.add(choice.plan().withName(PlanRank.name(named.size() + 1)));
    }
    Choice best = choices.get(0);
    Comparison side =
        new Comparison(best.plan().passage(), ImmutableList.copyOf(named), ImmutableList.of());
    page.text.append(
        ComparisonText.some(
            side,
            scoring,
            note -> note.moment() >= best.firstMoment() && note.moment() <= best.lastMoment(),
            columns,
            style));
    page.text.append(style.bold("Fingerings" + span.phrase())).append('\n');
    page.plan(named.get(0).name());
    for (int i = 1; i < named.size(); i++) {
      page.choice(named.get(i).name(), choices.get(i));
    }
    if (choices.size() < wanted) {
      page.paragraph(
          choices.size() == 1
              ? "  The plan allows no other fingering here."
              : "  The plan allows only " + choices.size() + " fingerings here.");
    }
    page.text.append('\n');
    page.paragraph(
        "  A fingering is a string, and for a stopped note a position, for each note of these"
            + " measures. Its points are those of the cheapest plan for all the music that contains it.");
    page.text.append('\n');
    page.paragraph(SummaryText.CARE);
    return page.text.toString();
  }

  private void paragraph(String paragraph) {
    TextLayout.wrap(paragraph, columns, 2).forEach(line -> text.append(line).append('\n'));
  }

  private void plan(String name) {
    Choice best = choices.get(0);
    paragraph(
        "  %s: %d points, as in '%s', %s."
            .formatted(name, best.plan().total(), best.plan().name(), hand(best)));
  }

  private void choice(String name, Choice choice) {
    Choice best = choices.get(0);
    MomentExplanation why = choice.comparedWith(best);
    List<String> clauses = new ArrayList<>();
    clauses.add(price(why.extraCost()) + ", " + hand(choice));
    clauses.add(rest(choice.changesBefore(best), choice.changesAfter(best)));
    shifts("also shifts to", why.shiftsAdded()).ifPresent(clauses::add);
    shifts("does not shift to", why.shiftsSaved()).ifPresent(clauses::add);
    paragraph("  " + name + ": " + String.join("; ", clauses) + ".");
  }

  private static String price(long more) {
    String points = Math.abs(more) + (Math.abs(more) == 1 ? " point " : " points ");
    return more == 0
        ? "costs the same"
        : points + (more > 0 ? "more" : "less, but leaves the positions of the plan unnecessarily");
  }

  private static String hand(Choice choice) {
    Optional<Position> from = choice.positionBefore();
    Optional<Position> to = choice.positionAfter();
    String start = from.map(p -> "comes from " + p.display()).orElse("begins the passage");
    String end = to.map(p -> "continues in " + p.display()).orElse("ends it");
    return start + " and " + (from.isEmpty() || to.isPresent() ? end : "ends the passage");
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
    TreeMap<Integer, String> numbers = new TreeMap<>();
    for (MomentExplanation.Change change : changes) {
      Place place = change.other().note().place();
      numbers.put(place.measureIndex(), place.measure());
    }
    return (changes.size() == 1 ? "1 note" : changes.size() + " notes")
        + " in m. "
        + String.join(", ", MeasureRanges.of(numbers));
  }

  private static Optional<String> shifts(String verb, List<PlannedNote> notes) {
    return notes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            verb
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
