package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.music.PrintedPosition;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What must be said of a plan and of what is printed in the part, a sentence each. */
public final class PlanRemarks {
  private static final int TOLD = 4;
  private static final Pattern NUMERAL = Pattern.compile("\\W*[IVX]+\\W*");

  private final Plan plan;

  private PlanRemarks(Plan plan) {
    this.plan = plan;
  }

  /** The sentences: where the plan leaves a string that words ask for, and what it keeps. */
  public static ImmutableList<String> of(Plan plan) {
    ImmutableList.Builder<String> told = ImmutableList.builder();
    StringDeviation.of(plan).forEach(left -> told.add(left.words()));
    if (plan.brief().keepPrinted()) {
      told.addAll(new PlanRemarks(plan).printed());
    }
    return told.build();
  }

  private List<String> printed() {
    List<String> told = new ArrayList<>();
    List<PrintedPosition> named = new ArrayList<>();
    List<PrintedPosition> unclear = new ArrayList<>();
    plan.passage()
        .positions()
        .forEach(asked -> (asked.position().isPresent() ? named : unclear).add(asked));
    if (!plan.passage().fingered()) {
      told.add(
          "No finger, string or position is printed in what was read, so that nothing is kept.");
    }
    if (!named.isEmpty()) {
      told.add(
          name()
              + " keeps the hand where it is printed: "
              + listed(
                  named.stream()
                      .map(asked -> asked.description() + " (to " + asked.end().description() + ")")
                      .toList())
              + (named.stream().anyMatch(PlanRemarks::numeral)
                  ? "; a numeral that can be no string is read as a position"
                  : "")
              + ".");
    }
    named.forEach(asked -> left(asked, told));
    fingers(told);
    if (!unclear.isEmpty()) {
      told.add(
          listed(unclear.stream().map(PrintedPosition::description).toList())
              + " may mean a string or a position and "
              + (unclear.size() == 1 ? "is" : "are")
              + " not kept; write 'sul G' or '3rd pos.' into the part, or say which with --strings or --stay.");
    }
    return told;
  }

  /** Where the hand cannot be in the position that words name. */
  private void left(PrintedPosition asked, List<String> told) {
    List<PlannedNote> elsewhere =
        plan.notes().stream()
            .filter(note -> asked.notes().contains(note.note().address()))
            .filter(note -> !note.open())
            .filter(note -> !asked.position().equals(position(note)))
            .toList();
    if (elsewhere.isEmpty()) {
      return;
    }
    ImmutableList<PlannedNote> first = ImmutableList.of(elsewhere.get(0));
    told.add(
        name()
            + " leaves the position of "
            + asked.description()
            + (asked.line() ? " for " : " from ")
            + listed(places(asked.line() ? elsewhere : first))
            + (asked.line() ? "" : " on")
            + ": out of reach in it, or something else is printed or demanded.");
  }

  private static Optional<Position> position(PlannedNote note) {
    return Optional.of(note.placement().frame().position());
  }

  /** Fingers and strings that the plan does not take as they are printed. */
  private void fingers(List<String> told) {
    List<PlannedNote> otherwise =
        plan.notes().stream()
            .filter(note -> !note.placement().asPrinted(note.note().marks()))
            .toList();
    if (!otherwise.isEmpty()) {
      told.add(
          name()
              + " does not take as printed: "
              + listed(places(otherwise))
              + "; no hand can on this instrument, or something else is demanded.");
    }
  }

  private static boolean numeral(PrintedPosition asked) {
    return NUMERAL.matcher(asked.words()).matches();
  }

  private String name() {
    return "'" + plan.name() + "'";
  }

  private static List<String> places(List<PlannedNote> notes) {
    Set<String> places = new LinkedHashSet<>();
    notes.forEach(
        note -> places.add(note.note().written().display() + " in " + note.note().place()));
    return List.copyOf(places);
  }

  private static String listed(List<String> all) {
    int more = all.size() - TOLD;
    return all.stream().limit(TOLD).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
