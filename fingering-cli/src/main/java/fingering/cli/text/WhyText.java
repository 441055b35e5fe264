package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.fingerboard.Placement;
import fingering.music.Place;
import fingering.plan.Alternative;
import fingering.plan.MomentExplanation;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.RomanNumeral;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Explains in sentences why a plan has its fingering at a moment. */
public final class WhyText {
  private static final int LISTED = 6;

  private final ImmutableList<Alternative> alternatives;
  private final StringBuilder text = new StringBuilder();
  private final int columns;

  private WhyText(ImmutableList<Alternative> alternatives, int columns) {
    this.alternatives = alternatives;
    this.columns = columns;
  }

  /**
   * Returns the sentences.
   *
   * @param alternatives the fingerings of the notes, that of the plan first
   */
  public static String of(
      ImmutableList<Alternative> alternatives,
      ScoringContext scoring,
      int columns,
      TextStyle style) {
    WhyText page = new WhyText(alternatives, columns);
    Plan plan = alternatives.get(0).plan();
    String title = HeadingText.title(plan.passage());
    page.text.append(style.bold(title)).append('\n');
    page.paragraph(scoring.line());
    page.sentences().forEach(page::paragraph);
    return page.text.toString();
  }

  private void paragraph(String sentence) {
    TextLayout.wrap(sentence, columns, 2).forEach(line -> text.append(line).append('\n'));
  }

  private List<String> sentences() {
    Alternative chosen = alternatives.get(0);
    String now =
        "In "
            + chosen.notes().get(0).note().place()
            + ", '"
            + chosen.plan().name()
            + "' plays "
            + fingering(chosen)
            + ".";
    if (alternatives.size() == 1) {
      return List.of(now, "The plan allows no other fingering here.");
    }
    MomentExplanation next = new MomentExplanation(chosen, alternatives.get(1));
    ImmutableList.Builder<String> sentences = ImmutableList.builder();
    sentences.add(now, price(next));
    if (!next.byRule().isEmpty()) {
      sentences.add(rules(next));
    }
    sentences.add(neighbours(next)).addAll(shifts(next));
    if (alternatives.size() > 2) {
      sentences.add(others());
    }
    return sentences.build();
  }

  private static String price(MomentExplanation why) {
    String next = "The next best fingering is " + fingering(why.other());
    String totals =
        " (" + why.other().plan().total() + " instead of " + why.chosen().plan().total() + ")";
    if (why.extraCost() > 0) {
      return next
          + ": the best plan with it costs "
          + points(why.extraCost())
          + " more"
          + totals
          + ".";
    }
    if (why.extraCost() == 0) {
      return next + ": the best plan with it costs the same, so either will do.";
    }
    return next
        + ": the best plan with it costs "
        + points(-why.extraCost())
        + " less"
        + totals
        + ", but leaves the positions of '"
        + why.chosen().plan().name()
        + "' unnecessarily.";
  }

  private static String points(long points) {
    return points + (points == 1 ? " point" : " points");
  }

  private static String rules(MomentExplanation why) {
    String higher = rules(why, true);
    String lower = rules(why, false);
    return (higher.isEmpty() ? "" : "It would cost more for: " + higher)
        + (higher.isEmpty() || lower.isEmpty() ? "" : "; ")
        + (lower.isEmpty() ? "" : (higher.isEmpty() ? "It" : "it") + " would cost less for: ")
        + lower
        + ".";
  }

  private static String rules(MomentExplanation why, boolean higher) {
    return why.byRule().stream()
        .filter(rule -> rule.points() > 0 == higher)
        .map(rule -> rule.name() + " " + signed(rule.points()))
        .collect(Collectors.joining(", "));
  }

  private static String signed(long points) {
    return (points < 0 ? "−" : "+") + Math.abs(points);
  }

  private static String neighbours(MomentExplanation why) {
    ImmutableList<MomentExplanation.Change> changes = why.changesElsewhere();
    if (changes.isEmpty()) {
      return "No other note would change.";
    }
    Place from = changes.get(0).chosen().note().place();
    Place to = changes.get(changes.size() - 1).chosen().note().place();
    return (changes.size() == 1 ? "1 other note" : changes.size() + " other notes")
        + " would change with it, "
        + (from.equals(to) ? "in " + from : "from " + from + " to " + to)
        + ": "
        + list(changes, WhyText::change)
        + ".";
  }

  private static String change(MomentExplanation.Change change) {
    return change.chosen().note().written().display()
        + " in m. "
        + change.chosen().note().place().measure()
        + " from "
        + place(change.chosen())
        + " to "
        + place(change.other());
  }

  private static List<String> shifts(MomentExplanation why) {
    ImmutableList.Builder<String> sentences = ImmutableList.builder();
    if (!why.shiftsAdded().isEmpty()) {
      sentences.add(
          "The hand would also shift in " + list(why.shiftsAdded(), WhyText::measureAndBeat) + ".");
    }
    if (!why.shiftsSaved().isEmpty()) {
      sentences.add(
          "It would not shift in " + list(why.shiftsSaved(), WhyText::measureAndBeat) + ".");
    }
    return sentences.build();
  }

  private static String measureAndBeat(PlannedNote note) {
    return note.note().place().toString();
  }

  private String others() {
    long base = alternatives.get(0).plan().total();
    return "Other fingerings: "
        + alternatives.stream()
            .skip(2)
            .map(other -> fingering(other) + " (" + signed(other.plan().total() - base) + ")")
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static <T> String list(List<T> things, Function<T, String> text) {
    int more = Math.max(0, things.size() - LISTED);
    return things.stream().limit(LISTED).map(text).collect(Collectors.joining("; "))
        + (more == 0 ? "" : "; and " + more + " more");
  }

  /** {@code C4 with 1 on III in 1st position and G4 with 4 on II in 1st position}. */
  private static String fingering(Alternative alternative) {
    return alternative.notes().stream()
        .map(note -> note.note().written().display() + " " + with(note))
        .collect(Collectors.joining(" and "));
  }

  private static String with(PlannedNote note) {
    return note.open() ? place(note) : "with " + place(note);
  }

  private static String place(PlannedNote note) {
    Placement placement = note.placement();
    String string = RomanNumeral.of(placement.string());
    return note.open()
        ? "open on " + string
        : note.finger()
            + " on "
            + string
            + " in "
            + placement.frame().position().display()
            + " position";
  }
}
