package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.demand.AllowPositions;
import fingering.demand.Demand;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.PrintedString;
import fingering.tables.Instrument;
import fingering.tables.Tuning;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Says why no plan meets a brief: which note cannot be taken, or which demands cannot be met
 * together, and what to do.
 *
 * @param planner plans the passage
 * @param brief what cannot be met
 */
record InfeasibilityDiagnosis(Planner planner, Brief brief) {
  /**
   * No hand takes more notes at once; of clusters that a damaged file holds, the rest is counted.
   */
  private static final int NAMED = 8;

  /** No string has the notes of a moment. */
  static InfeasibleBriefException outOfRange(Passage passage, Moment moment) {
    Instrument instrument = passage.instrument();
    boolean standard = instrument.tuning().equals(Tuning.STANDARD);
    String tuning = "tuning '" + instrument.tuning() + "'";
    boolean below =
        moment.starting().stream().anyMatch(note -> note.midi() < instrument.lowest().midi());
    String why =
        below
            ? "it lies below the lowest string"
                + (standard ? "" : " (" + lowest(instrument) + ", " + tuning + ")")
            : "it lies beyond the end of the fingerboard" + (standard ? "" : " (" + tuning + ")");
    return new InfeasibleBriefException(
        "The "
            + instrument.spoken()
            + " cannot play "
            + names(moment)
            + " in "
            + moment.place()
            + " of "
            + passage.partName()
            + ": "
            + why
            + "; check the part, "
            + (standard ? "" : "--tuning, ")
            + "--instrument or the transposition.");
  }

  /**
   * The note itself is named as written, so where that sounds elsewhere the lowest says it sounds.
   */
  private static String lowest(Instrument instrument) {
    return (instrument.writtenOctaves() == 0 ? "" : "sounding ") + instrument.lowest().display();
  }

  private static String names(Moment moment) {
    int more = moment.starting().size() - NAMED;
    return moment.starting().stream()
            .limit(NAMED)
            .map(note -> note.written().display())
            .collect(Collectors.joining("+"))
        + (more > 0 ? " and " + more + " more" : "");
  }

  /** What is told. */
  InfeasibleBriefException told() {
    Passage passage = planner.passage();
    if (!passage.oneString().isEmpty() && planner.meets(brief, brief.demands())) {
      return new InfeasibleBriefException(
          "What '"
              + brief.name()
              + "' must show cannot be shown on one string where words ask for it ("
              + passage.oneString().stream()
                  .map(PrintedString::description)
                  .collect(Collectors.joining(", "))
              + "); ask for less, or leave the words out of account with --ignore-words.");
    }
    Optional<ImmutableList<Demand>> smallest =
        Contradiction.smallest(brief.demands(), some -> planner.meets(brief, some));
    if (smallest.isEmpty() || smallest.get().isEmpty()) {
      return new InfeasibleBriefException(
          "No fingering of this passage shows what '"
              + brief.name()
              + "' must show: "
              + brief.requirement()
              + "; ask for less, or allow more positions.");
    }
    Brief contradictory = brief.withDemands(smallest.get());
    BitSet moments = GripSelection.of(contradictory, passage, planner.grips()).empty();
    if (smallest.get().size() == 1 && smallest.get().get(0) instanceof AllowPositions within) {
      return unreachable(within, moments.nextSetBit(0));
    }
    return new InfeasibleBriefException(
        new Contradiction(smallest.get(), moments).words(this::name));
  }

  private String name(int m) {
    Moment moment = planner.passage().moments().get(m);
    return names(moment) + " in " + moment.place();
  }

  private InfeasibleBriefException unreachable(AllowPositions within, int m) {
    String where =
        planner.grips().get(m).stream()
            .map(grip -> grip.frame().position())
            .distinct()
            .sorted()
            .map(Object::toString)
            .limit(4)
            .collect(Collectors.joining(", "));
    String positions =
        within.positions().stream()
            .sorted()
            .map(Object::toString)
            .collect(Collectors.joining(", "));
    return new InfeasibleBriefException(
        name(m)
            + " cannot be reached in the positions allowed ("
            + positions
            + "); it can be taken in position "
            + where
            + ", so allow one of these.");
  }
}
