package fingering.cli.text;

import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.Plan.MeasureCost;
import fingering.plan.PlanRemarks;
import fingering.plan.RuleCost;
import fingering.plan.Stay;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The summary below the notes: costs by rule, counts, tempi, and a comparison in sentences. */
public final class SummaryText {
  /** The warning about strain. */
  public static final String STRAIN =
      "Stretching and long practice can cause pain: stop if it hurts, rest, and ask your teacher or"
          + " a clinician.";

  /** The text below every plan. */
  public static final String CARE = STRAIN + " Your teacher has the last word on every fingering.";

  private static final int LABEL = 28;
  private static final int NARROWEST = 13;
  private static final int LISTED = 6;

  private final Comparison comparison;
  private final ScoringContext scoring;
  private final int columns;
  private final TextStyle style;
  private final StringBuilder text;

  /** The plans in blocks that fit side by side. */
  private final List<List<Plan>> plans;

  private final int cell;

  SummaryText(
      Comparison comparison,
      ScoringContext scoring,
      int columns,
      TextStyle style,
      StringBuilder text) {
    this.comparison = comparison;
    this.scoring = scoring;
    this.columns = columns;
    this.style = style;
    this.text = text;
    plans = TextLayout.blocks(comparison.plans(), (columns - LABEL) / NARROWEST);
    cell = Math.max(NARROWEST, Math.min(18, (columns - LABEL) / plans.get(0).size()));
  }

  void write() {
    plans.forEach(this::costs);
    rules();
    plans.forEach(this::counts);
    hardest();
    tempi();
    closing();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void paragraph(String paragraph) {
    TextLayout.wrap(paragraph, columns, 2).forEach(this::line);
  }

  private void row(List<Plan> shown, String label, Function<Plan, String> content) {
    StringBuilder row = new StringBuilder(TextLayout.pad(label, LABEL));
    // A long label takes space from the first number, which is short.
    int longer = row.length() - LABEL;
    for (Plan plan : shown) {
      row.append(TextLayout.padLeft(content.apply(plan), cell - longer));
      longer = 0;
    }
    line(row.toString());
  }

  private void heading(List<Plan> shown, String label) {
    StringBuilder head = new StringBuilder(TextLayout.pad(label, LABEL));
    for (Plan plan : shown) {
      head.append(TextLayout.padLeft(plan.name(), cell));
    }
    line(style.bold(head.toString()));
  }

  private void costs(List<Plan> shown) {
    heading(shown, "Points by rule");
    Map<String, String> rules = new LinkedHashMap<>();
    for (Plan plan : comparison.plans()) {
      plan.rules().forEach(rule -> rules.putIfAbsent(rule.rule(), rule.name()));
    }
    rules.forEach((id, name) -> row(shown, "  " + name, plan -> points(plan, id)));
    row(shown, "  Total", plan -> Long.toString(plan.total()));
    line("");
  }

  private void rules() {
    line(style.bold("What each rule costs"));
    comparison.plans().stream()
        .flatMap(plan -> plan.rules().stream())
        .map(SummaryText::explanation)
        .distinct()
        .forEach(this::paragraph);
    line("");
  }

  private static String explanation(RuleCost rule) {
    return "  "
        + rule.name()
        + ": "
        + rule.explanation()
        + " ("
        + rule.weight()
        + " points per "
        + rule.unit()
        + ")";
  }

  private static String points(Plan plan, String rule) {
    return plan.rules().stream()
        .filter(cost -> cost.rule().equals(rule))
        .map(RuleCost::cost)
        .map(Object::toString)
        .findFirst()
        .orElse("–");
  }

  private void counts(List<Plan> shown) {
    if (plans.size() == 1) {
      line(style.bold("Counts"));
    } else {
      heading(shown, "Counts");
    }
    row(shown, "  Shifts", plan -> Integer.toString(plan.shifts()));
    row(shown, "  String crossings", plan -> Integer.toString(plan.crossings()));
    row(shown, "  Fourth fingers", plan -> Integer.toString(plan.fourthFingers()));
    row(shown, "  Open strings", plan -> Integer.toString(plan.openStrings()));
    row(shown, "  Highest position", SummaryText::highest);
    comparison
        .positions()
        .forEach(
            position ->
                row(
                    shown,
                    "  Stopped notes in " + position.display(),
                    plan -> Integer.toString(plan.notesByPosition().getOrDefault(position, 0))));
    line("");
  }

  private static String highest(Plan plan) {
    return plan.highestPosition().map(p -> p.display()).orElse("–");
  }

  private void hardest() {
    line(style.bold("Hardest measures"));
    for (Plan plan : comparison.plans()) {
      String measures =
          plan.hardestMeasures(3).stream()
              .map(SummaryText::measure)
              .collect(Collectors.joining(", "));
      paragraph("  " + plan.name() + ": " + (measures.isEmpty() ? "none" : measures));
    }
    line("");
  }

  private void tempi() {
    line(style.bold(TempoText.heading(scoring.level())));
    TempoText.sentences(comparison.plans(), scoring.level())
        .forEach(sentence -> paragraph("  " + sentence));
    line("");
  }

  private static String measure(MeasureCost cost) {
    return "m. "
        + cost.measure()
        + " ("
        + cost.cost()
        + ", "
        + cost.costliestRule().toLowerCase(Locale.ROOT)
        + ")";
  }

  private void closing() {
    line(style.bold("Summary"));
    sentences(comparison).forEach(sentence -> paragraph("  " + sentence));
    line("");
    text.append(StudentsText.of(comparison.plans(), scoring.students(), columns, style));
    paragraph(CARE);
  }

  /** A sentence for each plan on its benefits and costs, and further remarks. */
  static List<String> sentences(Comparison comparison) {
    List<String> sentences = new ArrayList<>();
    Plan base = comparison.plans().get(0);
    sentences.add(base.name() + ": " + alone(base));
    for (Plan plan : comparison.plans().subList(1, comparison.plans().size())) {
      sentences.add(plan.name() + ": " + against(base, plan));
    }
    sentences.addAll(comparison.remarks());
    comparison.plans().stream()
        .flatMap(plan -> PlanRemarks.of(plan).stream())
        .forEach(sentences::add);
    return sentences;
  }

  private static String alone(Plan plan) {
    return whereabouts(plan)
        + count(plan.shifts(), "shift")
        + ", "
        + count(plan.crossings(), "string crossing")
        + " and "
        + count(plan.fourthFingers(), "fourth finger")
        + ".";
  }

  private static String against(Plan base, Plan plan) {
    long more = plan.total() - base.total();
    String price =
        more == 0
            ? "costs the same"
            : "costs " + Math.abs(more) + " points " + (more > 0 ? "more" : "less");
    return whereabouts(plan)
        + "compared with "
        + base.name()
        + ", it has "
        + change(base.shifts(), plan.shifts(), "shift")
        + ", "
        + change(base.crossings(), plan.crossings(), "string crossing")
        + " and "
        + change(base.fourthFingers(), plan.fourthFingers(), "fourth finger")
        + ", and "
        + price
        + ".";
  }

  private static String whereabouts(Plan plan) {
    return plan.brief().living()
        ? share(plan)
        : stays(plan).map(stays -> "in " + stays + "; ").orElse("");
  }

  /** How many stopped notes of a plan are in the position in which it lives. */
  private static String share(Plan plan) {
    return plan.notesInPreferred()
        + " of "
        + count(plan.stoppedNotes(), "stopped note")
        + " in "
        + plan.brief().preferred().stream().map(Position::display).collect(Collectors.joining(", "))
        + "; ";
  }

  /** The stays above first position: {@code 3rd at m. 17–24, 30}. */
  private static Optional<String> stays(Plan plan) {
    Map<Position, Set<String>> measures = new TreeMap<>();
    for (Stay stay : plan.stays()) {
      if (stay.position().compareTo(Position.FIRST) > 0) {
        measures.computeIfAbsent(stay.position(), p -> new LinkedHashSet<>()).add(stay.measures());
      }
    }
    String text =
        measures.entrySet().stream()
            .map(
                entry -> entry.getKey().display() + " at m. " + list(List.copyOf(entry.getValue())))
            .collect(Collectors.joining(" and in "));
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /** The first measures, separated by commas, and the number of the others. */
  public static String list(List<String> measures) {
    int listed = Math.min(measures.size(), LISTED);
    int more = measures.size() - listed;
    return String.join(", ", measures.subList(0, listed))
        + (more > 0 ? " and " + more + (more == 1 ? " more place" : " more places") : "");
  }

  private static String count(int number, String what) {
    return (number == 0 ? "no" : Integer.toString(number)) + " " + what + (number == 1 ? "" : "s");
  }

  private static String change(int from, int to, String what) {
    int change = to - from;
    if (change == 0) {
      return "the same number of " + what + "s";
    }
    int size = Math.abs(change);
    return size + (change > 0 ? " more " : " fewer ") + what + (size == 1 ? "" : "s");
  }
}
