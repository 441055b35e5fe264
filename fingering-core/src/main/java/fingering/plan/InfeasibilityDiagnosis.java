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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Explains why no plan meets a brief: which note is out of reach or which demands conflict, and
 * what to do about it.
 *
 * @param planner the planner of the passage
 * @param brief the brief that no plan meets
 */
record InfeasibilityDiagnosis(Planner planner, Brief brief) {
  /**
   * The most notes of a moment that a message names. No hand can play more; a damaged file may hold
   * larger clusters.
   */
  private static final int MAX_NAMED = 8;

  /** The exception for a moment with a note outside the range of the instrument. */
  static InfeasibleBriefException outOfRange(Passage passage, Moment moment) {
    Instrument instrument = passage.instrument();
    boolean standard = instrument.tuning().equals(Tuning.STANDARD);
    String tuning = "tuning '" + instrument.tuning() + "'";
    boolean below =
        moment.starting().stream().anyMatch(note -> note.midi() < instrument.lowest().midi());
    String why =
        below
            ? "it is below the lowest string"
                + (standard ? "" : " (" + lowest(instrument) + ", " + tuning + ")")
            : "it is beyond the end of the fingerboard" + (standard ? "" : " (" + tuning + ")");
    return new InfeasibleBriefException(
        "The "
            + instrument.nameInSentence()
            + " cannot play "
            + names(moment)
            + " in "
            + moment.place()
            + ofPart(passage)
            + ": "
            + why
            + "; check the part, "
            + (standard ? "" : "the tuning, ")
            + "the instrument or the transposition.");
  }

  /** The name of the part, unless it is that of the instrument, which the sentence has already. */
  private static String ofPart(Passage passage) {
    String part = passage.partName();
    return part.equalsIgnoreCase(passage.instrument().name()) ? "" : " of " + part;
  }

  /**
   * The lowest note of an instrument. The message names notes as written, so on a transposing
   * instrument this one is marked as sounding.
   */
  static String lowest(Instrument instrument) {
    return (instrument.writtenOctaves() == 0 ? "" : "sounding ") + instrument.lowest().display();
  }

  private static String names(Moment moment) {
    int more = moment.starting().size() - MAX_NAMED;
    return moment.starting().stream()
            .limit(MAX_NAMED)
            .map(note -> note.written().display())
            .collect(Collectors.joining("+"))
        + (more > 0 ? " and " + more + " more" : "");
  }

  /** The exception with the explanation as its message. */
  InfeasibleBriefException exception() {
    Passage passage = planner.passage();
    if (!passage.stringWords().isEmpty() && planner.feasible(brief, brief.demands())) {
      return new InfeasibleBriefException(
          "'"
              + brief.name()
              + "' cannot meet its demands and also follow the strings printed in the part ("
              + passage.stringWords().stream()
                  .map(PrintedString::description)
                  .collect(Collectors.joining(", "))
              + "); ask for less, or ignore the printed words.");
    }
    Optional<ImmutableList<Demand>> conflict =
        ConflictingDemands.minimal(brief.demands(), some -> planner.feasible(brief, some));
    if (conflict.isEmpty() || conflict.get().isEmpty()) {
      return new InfeasibleBriefException(
          "No fingering of this passage meets the requirement of '"
              + brief.name()
              + "': "
              + brief.requirement()
              + "; ask for less, or allow more positions.");
    }
    Brief conflicting = brief.withDemands(conflict.get());
    BitSet moments = GripSelection.of(conflicting, passage, planner.grips()).infeasibleMoments();
    if (conflict.get().size() == 1 && conflict.get().get(0) instanceof AllowPositions within) {
      return new InfeasibleBriefException(
          new UnreachableMoments(planner, within, moments).message(), conflict.get());
    }
    return new InfeasibleBriefException(
        new ConflictingDemands(conflict.get(), moments).message(this::name), conflict.get());
  }

  private String name(int m) {
    return name(planner.passage().moments().get(m));
  }

  /**
   * Some moments by name. Different notes are named before one that is named already is named
   * again.
   *
   * @param limit the most moments to name
   */
  static String names(Passage passage, BitSet moments, int limit) {
    Map<String, String> byNotes = new LinkedHashMap<>();
    moments.stream()
        .mapToObj(passage.moments()::get)
        .forEach(moment -> byNotes.putIfAbsent(names(moment), name(moment)));
    List<String> named = byNotes.values().stream().limit(limit).toList();
    int more = moments.cardinality() - named.size();
    return String.join(", ", named) + (more > 0 ? " and " + more + " more" : "");
  }

  /** The notes that start at a moment, and where: {@code C4+E♭4 in measure 2, beat 1}. */
  static String name(Moment moment) {
    return names(moment) + " in " + moment.place();
  }
}
