package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;

/**
 * Plans for the same passage, side by side.
 *
 * @param passage the music
 * @param plans the plans; the first is the one the others are measured against
 * @param remarks what must be said of them, a sentence each: a plan that could not be made, or that
 *     shows less than it should
 */
public record Comparison(
    Passage passage, ImmutableList<Plan> plans, ImmutableList<String> remarks) {

  /**
   * Whether the plans do not all take a note with the same string, finger and position.
   *
   * @param note index of the note in the notes of each plan, from 0
   * @throws IndexOutOfBoundsException if there is no such note
   */
  public boolean differs(int note) {
    PlannedNote first = plans.get(0).notes().get(note);
    for (Plan plan : plans) {
      if (!plan.notes().get(note).takenLike(first)) {
        return true;
      }
    }
    return false;
  }

  /** How many notes are not taken alike by all. */
  public int differences() {
    int differing = 0;
    for (int i = 0; i < plans.get(0).notes().size(); i++) {
      differing += differs(i) ? 1 : 0;
    }
    return differing;
  }
}
