package fingering.page.audition;

import com.google.common.collect.ImmutableList;
import fingering.exercise.PlannedScale;

/**
 * A scale with its fingerings.
 *
 * @param ways the easiest one, and one for each position in which it can begin
 * @param care the warning about strain
 */
public record ScaleResult(ImmutableList<Way> ways, String care) {

  /**
   * A fingering of the scale.
   *
   * @param demand the demand on the fingering, as in a brief: {@code allow=3}; empty for the
   *     easiest
   * @param position the position in which it stays or begins: 3rd; empty for the easiest
   * @param throughout whether all of it is in that position
   * @param line where the hand is, with the shifts, string crossings and fourth fingers
   * @param remarks what to know about it; a sentence each
   * @param planned the notes and the plan
   */
  public record Way(
      String demand,
      String position,
      boolean throughout,
      String line,
      ImmutableList<String> remarks,
      PlannedScale planned) {}
}
