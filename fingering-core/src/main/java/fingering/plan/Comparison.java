package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.tables.Position;

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
