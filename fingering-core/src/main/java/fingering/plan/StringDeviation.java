package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.music.PrintedString;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The notes for which a plan has to leave a string that printed words ask for.
 *
 * @param plan the plan
 * @param words the printed words
 * @param notes the notes on other strings, in score order; at least one
 */
public record StringDeviation(Plan plan, PrintedString words, ImmutableList<PlannedNote> notes) {
  /** The most moments that the sentence names. */
  private static final int MAX_NAMED = 4;

  /** The deviations of a plan, in the order of the printed words. */
  public static ImmutableList<StringDeviation> of(Plan plan) {
    ImmutableList.Builder<StringDeviation> deviations = ImmutableList.builder();
    for (PrintedString words : plan.passage().stringWords()) {
      ImmutableList<PlannedNote> notes =
          plan.notes().stream()
              .filter(planned -> words.notes().contains(planned.note().address()))
              .filter(planned -> planned.placement().string() != words.string())
              .collect(ImmutableList.toImmutableList());
      if (!notes.isEmpty()) {
        deviations.add(new StringDeviation(plan, words, notes));
      }
    }
    return deviations.build();
  }

  /** A sentence that names the notes and the reasons. */
  public String text() {
    ImmutableListMultimap<Integer, PlannedNote> moments =
        ImmutableListMultimap.copyOf(
            notes.stream()
                .collect(
                    ImmutableListMultimap.toImmutableListMultimap(
                        PlannedNote::moment, note -> note)));
    int more = moments.keySet().size() - MAX_NAMED;
    return "'"
        + plan.name()
        + "' leaves the string of "
        + words.description()
        + " for "
        + moments.asMap().values().stream()
            .limit(MAX_NAMED)
            .map(this::describe)
            .collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "")
        + ".";
  }

  /** Describes notes that begin together, with the reason. */
  private String describe(Collection<PlannedNote> together) {
    List<PlannedNote> chord = List.copyOf(together);
    return chord.stream()
            .map(note -> note.note().written().display())
            .collect(Collectors.joining("+"))
        + " in "
        + chord.get(0).note().place()
        + " ("
        + reason(chord.get(0))
        + ")";
  }

  private String reason(PlannedNote note) {
    int open = plan.passage().instrument().string(words.string()).pitch().midi();
    if (note.note().midi() < open) {
      return "below the string";
    }
    if (plan.passage().moments().get(note.moment()).sounding().size() > 1) {
      return "more than one note at once";
    }
    return plan.brief().gripDemands().isEmpty() && !plan.brief().keepPrinted()
        ? "out of reach on it"
        : "out of reach on it, or ruled out by your demands";
  }
}
