package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import fingering.cli.option.ScoringContext;
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

/** Why a plan takes the notes of a moment as it does, in sentences. */
public final class WhyText {
  private static final int TOLD = 6;

  private final ImmutableList<Alternative> ways;
  private final StringBuilder text = new StringBuilder();
  private final int columns;

  private WhyText(ImmutableList<Alternative> ways, int columns) {
    this.ways = ways;
    this.columns = columns;
  }

  /**
   * The sentences.
   *
   * @param ways the ways to take the notes, that of the plan first
   */
  public static String of(
      ImmutableList<Alternative> ways, ScoringContext charging, int columns, TextStyle style) {
    WhyText page = new WhyText(ways, columns);
    Plan plan = ways.get(0).plan();
    String title =
        plan.passage().title().isBlank() ? plan.passage().partName() : plan.passage().title();
    page.text.append(style.bold(title)).append('\n');
    page.paragraph(charging.line());
    page.sentences().forEach(page::paragraph);
    return page.text.toString();
  }

  private void paragraph(String sentence) {
    TextLayout.wrap(sentence, columns, 2).forEach(line -> text.append(line).append('\n'));
  }

  private List<String> sentences() {
    Alternative chosen = ways.get(0);
    String now =
        "In "
            + chosen.notes().get(0).note().place()
            + ", '"
            + chosen.plan().name()
            + "' takes "
            + taken(chosen)
            + ".";
    if (ways.size() == 1) {
      return List.of(now, "There is no other way here that this plan may take.");
    }
    MomentExplanation next = new MomentExplanation(chosen, ways.get(1));
    ImmutableList.Builder<String> told = ImmutableList.builder();
    told.add(now, price(next));
    if (!next.byRule().isEmpty()) {
      told.add(rules(next));
    }
    told.add(neighbours(next)).addAll(shifts(next));
    if (ways.size() > 2) {
      told.add(further());
    }
    return told.build();
  }

  private static String price(MomentExplanation why) {
    String way = "The next best way is " + taken(why.other());
    String totals =
        " (" + why.other().plan().total() + " against " + why.chosen().plan().total() + ")";
    if (why.extraCost() > 0) {
      return way
          + ": the best plan with it costs "
          + points(why.extraCost())
          + " more"
          + totals
          + ".";
    }
    if (why.extraCost() == 0) {
      return way + ": the best plan with it costs the same, so either will do.";
    }
    return way
        + ": the best plan with it costs "
        + points(-why.extraCost())
        + " less"
        + totals
        + ", but leaves the positions of '"
        + why.chosen().plan().name()
        + "' where it need not.";
  }

  private static String points(long points) {
    return points + (points == 1 ? " point" : " points");
  }

  private static String rules(MomentExplanation why) {
    String dearer = rules(why, true);
    String cheaper = rules(why, false);
    return (dearer.isEmpty() ? "" : "It would cost more for: " + dearer)
        + (dearer.isEmpty() || cheaper.isEmpty() ? "" : "; ")
        + (cheaper.isEmpty() ? "" : (dearer.isEmpty() ? "It" : "it") + " would cost less for: ")
        + cheaper
        + ".";
  }

  private static String rules(MomentExplanation why, boolean dearer) {
    return why.byRule().stream()
        .filter(rule -> rule.points() > 0 == dearer)
        .map(rule -> rule.name() + " " + signed(rule.points()))
        .collect(Collectors.joining(", "));
  }

  private static String signed(long points) {
    return (points < 0 ? "−" : "+") + Math.abs(points);
  }

  private static String neighbours(MomentExplanation why) {
    ImmutableList<MomentExplanation.Change> changes = why.changesElsewhere();
    if (changes.isEmpty()) {
      return "No other note would change with it.";
    }
    Place from = changes.get(0).chosen().note().place();
    Place to = changes.get(changes.size() - 1).chosen().note().place();
    return "With it "
        + (changes.size() == 1 ? "1 other note" : changes.size() + " other notes")
        + " would change, "
        + (from.equals(to) ? "in " + from : "from " + from + " to " + to)
        + ": "
        + list(changes, WhyText::change)
        + ".";
  }

  private static String change(MomentExplanation.Change change) {
    return change.chosen().note().written().display()
        + " in m. "
        + change.chosen().note().place().measure()
        + " to "
        + way(change.other())
        + " from "
        + way(change.chosen());
  }

  private static List<String> shifts(MomentExplanation why) {
    ImmutableList.Builder<String> told = ImmutableList.builder();
    if (!why.shiftsAdded().isEmpty()) {
      told.add("The hand would also shift in " + list(why.shiftsAdded(), WhyText::place) + ".");
    }
    if (!why.shiftsSaved().isEmpty()) {
      told.add("It would not shift in " + list(why.shiftsSaved(), WhyText::place) + ".");
    }
    return told.build();
  }

  private static String place(PlannedNote note) {
    return note.note().place().toString();
  }

  private String further() {
    long base = ways.get(0).plan().total();
    return "Further ways: "
        + ways.stream()
            .skip(2)
            .map(way -> taken(way) + " (" + signed(way.plan().total() - base) + ")")
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static <T> String list(List<T> things, Function<T, String> word) {
    int untold = Math.max(0, things.size() - TOLD);
    return things.stream().limit(TOLD).map(word).collect(Collectors.joining("; "))
        + (untold == 0 ? "" : "; and " + untold + " more");
  }

  /** {@code C4 with 1 on III in 1st position and G4 with 4 on II in 1st position}. */
  private static String taken(Alternative way) {
    return way.notes().stream()
        .map(note -> note.note().written().display() + " " + with(note))
        .collect(Collectors.joining(" and "));
  }

  private static String with(PlannedNote note) {
    return note.open() ? way(note) : "with " + way(note);
  }

  private static String way(PlannedNote note) {
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
