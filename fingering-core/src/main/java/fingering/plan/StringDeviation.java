package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.music.PrintedString;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Where a plan leaves a string that words ask for, because it has to.
 *
 * @param plan the plan
 * @param asked the words
 * @param notes the notes it takes elsewhere, in score order; at least one
 */
public record StringDeviation(Plan plan, PrintedString asked, ImmutableList<PlannedNote> notes) {
  private static final int TOLD = 4;

  /** All such places of a plan, in the order of the words. */
  public static ImmutableList<StringDeviation> of(Plan plan) {
    ImmutableList.Builder<StringDeviation> left = ImmutableList.builder();
    for (PrintedString asked : plan.passage().oneString()) {
      ImmutableList<PlannedNote> notes =
          plan.notes().stream()
              .filter(planned -> asked.notes().contains(planned.note().address()))
              .filter(planned -> planned.placement().string() != asked.string())
              .collect(ImmutableList.toImmutableList());
      if (!notes.isEmpty()) {
        left.add(new StringDeviation(plan, asked, notes));
      }
    }
    return left.build();
  }

  /** The sentence for it. */
  public String words() {
    ImmutableListMultimap<Integer, PlannedNote> moments =
        ImmutableListMultimap.copyOf(
            notes.stream()
                .collect(
                    ImmutableListMultimap.toImmutableListMultimap(
                        PlannedNote::moment, note -> note)));
    int more = moments.keySet().size() - TOLD;
    return "'"
        + plan.name()
        + "' leaves the string of "
        + asked.description()
        + " for "
        + moments.asMap().values().stream()
            .limit(TOLD)
            .map(this::told)
            .collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "")
        + ".";
  }

  private String told(Collection<PlannedNote> together) {
    List<PlannedNote> some = List.copyOf(together);
    return some.stream()
            .map(note -> note.note().written().display())
            .collect(Collectors.joining("+"))
        + " in "
        + some.get(0).note().place()
        + " ("
        + why(some.get(0))
        + ")";
  }

  private String why(PlannedNote note) {
    int open = plan.passage().instrument().string(asked.string()).pitch().midi();
    if (note.note().midi() < open) {
      return "below the string";
    }
    if (plan.passage().moments().get(note.moment()).sounding().size() > 1) {
      return "more notes than one at once";
    }
    return plan.brief().limits().isEmpty() && !plan.brief().keepPrinted()
        ? "out of reach on it"
        : "out of reach on it, or something else is demanded";
  }
}
