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

/** Remarks on how a plan follows what is printed in the part, a sentence each. */
public final class PlanRemarks {
  /** The most places that a remark names. */
  private static final int MAX_NAMED = 4;

  private static final Pattern NUMERAL = Pattern.compile("\\W*[IVX]+\\W*");

  private final Plan plan;

  private PlanRemarks(Plan plan) {
    this.plan = plan;
  }

  /** The remarks: where the plan leaves a printed string, and how it keeps printed fingerings. */
  public static ImmutableList<String> of(Plan plan) {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    StringDeviation.of(plan).forEach(deviation -> remarks.add(deviation.text()));
    if (plan.brief().keepPrinted()) {
      remarks.addAll(new PlanRemarks(plan).onPrinted());
    }
    return remarks.build();
  }

  private List<String> onPrinted() {
    List<String> remarks = new ArrayList<>();
    List<PrintedPosition> clear = new ArrayList<>();
    List<PrintedPosition> ambiguous = new ArrayList<>();
    plan.passage()
        .positionWords()
        .forEach(words -> (words.position().isPresent() ? clear : ambiguous).add(words));
    if (!plan.passage().fingered()) {
      remarks.add(
          "No finger, string or position is printed in this music, so there is none to keep.");
    }
    if (!clear.isEmpty()) {
      remarks.add(
          name()
              + " keeps the printed positions: "
              + list(
                  clear.stream()
                      .map(words -> words.description() + " (to " + words.end().description() + ")")
                      .toList())
              + (clear.stream().anyMatch(PlanRemarks::numeral)
                  ? "; a numeral that cannot be a string is read as a position"
                  : "")
              + ".");
    }
    clear.forEach(words -> addDepartures(words, remarks));
    addFingers(remarks);
    if (!ambiguous.isEmpty()) {
      remarks.add(
          list(ambiguous.stream().map(PrintedPosition::description).toList())
              + " may mean a string or a position and "
              + (ambiguous.size() == 1 ? "is" : "are")
              + " not kept; write 'sul G' or '3rd pos.' into the part, or demand the string or the position.");
    }
    return remarks;
  }

  /** Adds a remark on the notes for which the hand leaves a printed position. */
  private void addDepartures(PrintedPosition words, List<String> remarks) {
    List<PlannedNote> elsewhere =
        plan.notes().stream()
            .filter(note -> words.notes().contains(note.note().address()))
            .filter(note -> !note.open())
            .filter(note -> !words.position().equals(position(note)))
            .toList();
    if (elsewhere.isEmpty()) {
      return;
    }
    ImmutableList<PlannedNote> first = ImmutableList.of(elsewhere.get(0));
    remarks.add(
        name()
            + " leaves the position of "
            + words.description()
            + (words.line() ? " for " : " from ")
            + list(places(words.line() ? elsewhere : first))
            + (words.line() ? "" : " on")
            + ": out of reach there, or ruled out by a printed finger or by your demands.");
  }

  private static Optional<Position> position(PlannedNote note) {
    return Optional.of(note.placement().frame().position());
  }

  /** Adds a remark on the notes without their printed finger or string. */
  private void addFingers(List<String> remarks) {
    List<PlannedNote> different =
        plan.notes().stream()
            .filter(note -> !note.placement().matchesPrinted(note.note().marks()))
            .toList();
    if (!different.isEmpty()) {
      remarks.add(
          name()
              + " does not keep the printed finger or string of "
              + list(places(different))
              + ": unplayable on this instrument, or ruled out by your demands.");
    }
  }

  private static boolean numeral(PrintedPosition words) {
    return NUMERAL.matcher(words.words()).matches();
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

  private static String list(List<String> all) {
    int more = all.size() - MAX_NAMED;
    return all.stream().limit(MAX_NAMED).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
