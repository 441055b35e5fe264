package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.tables.Position;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Plans for the same passage, side by side.
 *
 * @param passage the music
 * @param plans the plans; the others are compared with the first
 * @param remarks remarks on them, a sentence each, for example on a plan that does not exist or
 *     that shows less than it should
 * @param details further remarks for those who read every note, a sentence each, for example on
 *     notes outside the positions of a plan
 */
public record Comparison(
    Passage passage,
    ImmutableList<Plan> plans,
    ImmutableList<String> remarks,
    ImmutableList<String> details) {

  /** Plans without details. */
  public Comparison(Passage passage, ImmutableList<Plan> plans, ImmutableList<String> remarks) {
    this(passage, plans, remarks, ImmutableList.of());
  }

  /** The remarks, then the details. */
  public ImmutableList<String> allRemarks() {
    return ImmutableList.<String>builder().addAll(remarks).addAll(details).build();
  }

  /**
   * Whether the plans differ in the string, finger or position of a note.
   *
   * @param note index of the note in the notes of each plan, from 0
   * @throws IndexOutOfBoundsException if there is no note with that index
   */
  public boolean differs(int note) {
    PlannedNote first = plans.get(0).notes().get(note);
    for (Plan plan : plans) {
      if (!plan.notes().get(note).sameFingering(first)) {
        return true;
      }
    }
    return false;
  }

  /** The measures in which the plans differ in any note, in score order. */
  public ImmutableList<Measure> differingMeasures() {
    List<PlannedNote> notes = plans.get(0).notes();
    Set<Integer> differing =
        IntStream.range(0, notes.size())
            .filter(this::differs)
            .mapToObj(note -> notes.get(note).note().place().measureIndex())
            .collect(Collectors.toSet());
    return passage.measures().stream()
        .filter(measure -> differing.contains(measure.index()))
        .collect(ImmutableList.toImmutableList());
  }

  /** The positions in which any plan has stopped notes, the lowest first. */
  public ImmutableList<Position> positions() {
    return plans.stream()
        .flatMap(plan -> plan.notesByPosition().keySet().stream())
        .distinct()
        .sorted()
        .collect(ImmutableList.toImmutableList());
  }

  /** The number of notes in whose fingering the plans differ. */
  public int differences() {
    int differing = 0;
    for (int i = 0; i < plans.get(0).notes().size(); i++) {
      differing += differs(i) ? 1 : 0;
    }
    return differing;
  }
}
